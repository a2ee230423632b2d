// Puts what was typed on the start screen into the kit, as far as it fits, and says for each field what does not.
import * as v from 'valibot';
import { Distance, FocalLength } from '../../kit/kit.ts';
import type { Saved, Session } from '../session/session.ts';
import { words } from '../../words/catalogue.ts';
import { typedNumber } from '../words/typedNumber.ts';
import { NEW, type Draft, type FieldName, type Picks } from './draft.ts';
import { distanceText, focalLengthText, inMillimetresTyped } from './typedKit.ts';

type Faults = Partial<Record<FieldName, string>>;
type Saving = Pick<Session, 'saveBody' | 'saveLens' | 'saveSituation'>;

/** The situation to measure, or null while something does not fit; `patch` brings the faults and what is in the kit now. */
export interface Kept {
  readonly situation: string | null;
  readonly patch: Partial<Draft>;
}

export function keepTyped(draft: Draft, picks: Picks, session: Saving): Kept {
  const faults: Faults = {};
  const body = picks.body?.id ?? taken(session.saveBody(bodyTyped(draft)), BODY_FIELDS, faults);
  const lens = picks.lens?.id ?? taken(session.saveLens({ name: draft.lensName }), LENS_FIELDS, faults);
  const situation = picks.situation?.id ?? keepSituation(draft, picks, body, lens, session, faults);
  return { situation, patch: { body: body ?? NEW, lens: lens ?? NEW, situation: situation ?? NEW, faults } };
}

const BODY_FIELDS: Record<string, FieldName> = { name: 'bodyName', scale: 'scale', 'scale.min': 'min', 'scale.max': 'max', 'scale.step': 'step' };
const LENS_FIELDS: Record<string, FieldName> = { name: 'lensName' };

const bodyTyped = ({ bodyName, min, max, step, arrows }: Draft) => ({
  name: bodyName,
  scale: { min: typedNumber(min), max: typedNumber(max), step: typedNumber(step) },
  arrows,
});

/** Both lengths are judged even where the body or the lens does not fit yet, so that every fault shows at once. */
function keepSituation(
  draft: Draft,
  picks: Picks,
  body: string | null,
  lens: string | null,
  session: Saving,
  faults: Faults,
): string | null {
  const focalLength = v.safeParse(FocalLength, typedNumber(focalLengthText(draft, picks)));
  const distance = v.safeParse(Distance, inMillimetresTyped(distanceText(draft, picks)));
  if (!focalLength.success) faults.focalLength = words('kit').fault['no focal length'];
  if (!distance.success) faults.distance = words('kit').fault['no distance'];
  if (body === null || lens === null || !focalLength.success || !distance.success) return null;
  return taken(session.saveSituation({ body, lens, converter: picks.converter?.id ?? null, focalLength: focalLength.output, distance: distance.output }), {}, faults);
}

/** The id, or null and the faults noted under our names for the fields. */
function taken(saved: Saved, names: Record<string, FieldName>, faults: Faults): string | null {
  if (saved.ok) return saved.id;
  for (const { field, sentence } of saved.faults) faults[names[field ?? ''] ?? 'whole'] = sentence;
  return null;
}

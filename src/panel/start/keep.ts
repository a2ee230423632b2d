// Puts what was typed on the start screen into the kit, as far as it fits, and says for each field what does not.
import type { Fault, Saved, Session } from '../session/session.ts';
import { typedNumber } from '../words/quantities.ts';
import { distanceText, inMillimetresTyped, NEW, type Draft, type FieldName, type Picks } from './draft.ts';

type Faults = Partial<Record<FieldName, string>>;
export type Kept = ({ readonly ok: true; readonly situation: string } | { readonly ok: false }) & { readonly patch: Partial<Draft> };

/** The situation to measure; `patch` brings the faults, and the ids of what is in the kit now. */
export function keepTyped(draft: Draft, picks: Picks, session: Pick<Session, 'saveBody' | 'saveLens' | 'saveSituation'>): Kept {
  const faults = notNumbers(draft, picks);
  const body = picks.body?.id ?? (hasAny(faults, ['min', 'max', 'step']) ? null : taken(saveBody(draft, session), BODY_FIELDS, faults));
  const lens = picks.lens?.id ?? taken(session.saveLens({ name: draft.lensName }), { name: 'lensName' }, faults);
  const known = { body: body ?? NEW, lens: lens ?? NEW };
  if (body === null || lens === null || hasAny(faults, ['focalLength', 'distance'])) return { ok: false, patch: { ...known, faults } };
  if (picks.situation) return { ok: true, situation: picks.situation.id, patch: { ...known, faults } };
  const lengths = { focalLength: typedNumber(draft.focalLength), distance: inMillimetresTyped(distanceText(draft)) };
  const situation = taken(session.saveSituation({ body, lens, ...lengths }), SITUATION_FIELDS, faults);
  return situation === null ? { ok: false, patch: { ...known, faults } } : { ok: true, situation, patch: { ...known, situation, faults } };
}

const BODY_FIELDS: Record<string, FieldName> = { name: 'bodyName', scale: 'scale', 'scale.min': 'min', 'scale.max': 'max', 'scale.step': 'step' };
const SITUATION_FIELDS: Record<string, FieldName> = { focalLength: 'focalLength', distance: 'distance' };

const saveBody = ({ bodyName, min, max, step, arrows }: Draft, session: Pick<Session, 'saveBody'>): Saved =>
  session.saveBody({ name: bodyName, scale: { min: typedNumber(min), max: typedNumber(max), step: typedNumber(step) }, arrows });

/** The id, or null and the faults noted under our names for the fields. */
function taken(saved: Saved, names: Record<string, FieldName>, faults: Faults): string | null {
  if (saved.ok) return saved.id;
  for (const { field, sentence } of saved.faults as readonly Fault[]) faults[names[field ?? ''] ?? 'whole'] = sentence;
  return null;
}

/** Fields that must hold a number and do not. */
function notNumbers(draft: Draft, { body, situation }: Picks): Faults {
  const faults: Faults = {};
  if (body === null) {
    if (!isNumber(draft.min)) faults.min = 'Enter the lowest value, such as \u221220.';
    if (!isNumber(draft.max)) faults.max = 'Enter the highest value, such as +20.';
    if (!isNumber(draft.step)) faults.step = 'Enter the step, usually 1.';
  }
  if (situation === null) {
    if (!isNumber(draft.focalLength)) faults.focalLength = 'Enter the focal length in millimetres, such as 85.';
    if (!isNumber(distanceText(draft))) faults.distance = 'Enter the distance in metres, such as 4.25.';
  }
  return faults;
}

const isNumber = (text: string): boolean => Number.isFinite(typedNumber(text));
const hasAny = (faults: Faults, names: readonly FieldName[]): boolean => names.some((name) => faults[name] !== undefined);

// Whose bench it is: the sweep under way, or the pairing that is picked and typed on the start screen.
import { words } from '../../words/catalogue.ts';
import * as v from 'valibot';
import { Distance } from '../../kit/kit.ts';
import { readFocalLength } from '../../optics/length.ts';
import type { Millimetres } from '../../units.ts';
import type { Session } from '../session/session.ts';
import { picksOf, type Draft } from '../start/draft.ts';
import { distanceText, focalLengthText, inMillimetresTyped } from '../start/typedKit.ts';

export interface BenchSubject {
  readonly body: string;
  readonly lens: string;
  readonly focalLength: Millimetres;
  readonly distance: Millimetres;
}

/** The subject, or a sentence that says what is still to be entered. */
export function subjectOf(session: Session, draft: Draft): BenchSubject | string {
  const sweep = session.sweep.value;
  if (sweep) return sweep.plan.subject;
  const picks = picksOf(draft, session.kit.value, session.records.value);
  const { body, lens, situation } = picks;
  const names = { body: body?.name ?? draft.bodyName.trim(), lens: lens?.name ?? draft.lensName.trim() };
  if (situation) return { ...names, focalLength: situation.focalLength, distance: situation.distance };
  const focalLength = readFocalLength(focalLengthText(draft, picks));
  if (!focalLength.ok) return focalLength.sentence;
  const distance = v.safeParse(Distance, inMillimetresTyped(distanceText(draft, picks)));
  return distance.success ? { ...names, focalLength: focalLength.value, distance: distance.output } : words('kit').fault['no distance'];
}

// Whose bench it is: the sweep under way, or the pairing that is picked and typed on the start screen.
import * as v from 'valibot';
import { Distance } from '../../kit/kit.ts';
import { distanceOf } from '../../kit/told.ts';
import { readFocalLength } from '../../optics/length.ts';
import { isNamed, type Unnamed } from '../../sweep/plan.ts';
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
  if (sweep) return isNamed(sweep.plan.subject) ? sweep.plan.subject : ofParts(sweep.plan.subject, session);
  const picks = picksOf(draft, session.kit.value, session.records.value);
  const { body, lens, situation } = picks;
  const names = { body: body?.name ?? draft.bodyName.trim(), lens: lens?.name ?? draft.lensName.trim() };
  if (situation) return { ...names, focalLength: situation.focalLength, distance: situation.distance };
  const focalLength = readFocalLength(focalLengthText(draft, picks));
  if (!focalLength.ok) return focalLength.say;
  const distance = v.safeParse(Distance, inMillimetresTyped(distanceText(draft, picks)));
  return distance.success ? { ...names, focalLength: focalLength.value, distance: distance.output } : distance.issues[0].message;
}

/** What was told of a sweep so far is enough where its focal length is. */
function ofParts(parts: Unnamed, session: Session): BenchSubject | string {
  const distance = distanceOf(parts, session.kit.value);
  if (parts.focalLength === null || distance === null) return NO_LENGTH;
  return { body: parts.body?.name ?? '', lens: parts.lens?.name ?? '', focalLength: parts.focalLength, distance };
}

const NO_LENGTH = 'Tell the focal length of this sweep first: press it in the line of its name.';

// Whose bench it is: the sweep under way, or the pairing that is picked and typed on the start screen.
import { distanceOf } from '../../kit/told.ts';
import { isNamed } from '../../sweep/named.ts';
import type { Unnamed } from '../../sweep/plan.ts';
import type { Millimetres } from '../../units.ts';
import type { Session } from '../session/session.ts';
import type { Draft } from '../start/draft.ts';
import { previewOf } from '../start/preview.ts';

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
  return ofParts(previewOf(draft, { kit: session.kit.value, records: session.records.value, offers: 'last lens' }).parts, session);
}

/** What was told of a sweep so far is enough where its focal length is. */
function ofParts(parts: Unnamed, session: Session): BenchSubject | string {
  const distance = distanceOf(parts, session.kit.value);
  if (parts.focalLength === null || distance === null) return session.sweep.value ? UNTOLD : NO_LENGTH;
  return { body: parts.body?.name ?? '', lens: parts.lens?.name ?? '', focalLength: parts.focalLength, distance };
}

const NO_LENGTH = 'Write the focal length in millimetres, such as 85.';
const UNTOLD = 'Tell the focal length of this sweep first: press “Focal length” above its value.';

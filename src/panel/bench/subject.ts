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

/** What is still to be entered before the bench can be worked out: on the start, or of the sweep under way. */
export type Missing = 'no focal length' | 'untold';

export function subjectOf(session: Session, draft: Draft): BenchSubject | Missing {
  const sweep = session.sweep.value;
  if (sweep) return isNamed(sweep.plan.subject) ? sweep.plan.subject : ofParts(sweep.plan.subject, session);
  return ofParts(previewOf(draft, { kit: session.kit.value, records: session.records.value, offers: 'last lens' }).parts, session);
}

/** What was told of a sweep so far is enough where its focal length is. */
function ofParts(parts: Unnamed, session: Session): BenchSubject | Missing {
  const distance = distanceOf(parts, session.kit.value);
  if (parts.focalLength === null || distance === null) return session.sweep.value ? 'untold' : 'no focal length';
  return { body: parts.body?.name ?? '', lens: parts.lens?.name ?? '', focalLength: parts.focalLength, distance };
}

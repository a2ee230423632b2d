// A series that checks the value entered, from its pictures to what follows. Pictures in which focus cannot be told count for nothing.
import type { DepthOfField } from '../../optics/depthOfField.ts';
import type { Millimetres } from '../../units.ts';
import { checkEntered, type CheckShot, type EnteredCheck } from '../checkEntered.ts';
import type { WithInterval } from '../withInterval.ts';
import type { CheckPart } from './checkParts.ts';
import { liveViewReference } from './liveViewReference.ts';
import { errorOf, type SeriesPicture } from './seriesPicture.ts';

export interface CheckSeries {
  readonly check: EnteredCheck;
  /** Shots with autofocus that count. */
  readonly shots: number;
  readonly reference: WithInterval | null;
  readonly depth: DepthOfField;
  /** Millimetres at the target for one step, an estimate. */
  readonly step: Millimetres;
}

/** Null where no shot with autofocus counts yet. */
export function readCheck(pictures: readonly SeriesPicture[], parts: ReadonlyMap<string, CheckPart>): CheckSeries | null {
  const told = pictures.flatMap(({ id, reading: { focus } }) => (focus.ok ? [{ part: parts.get(id), focus: focus.value }] : []));
  const shots = told.flatMap(({ part, focus }): CheckShot[] => (part === 'near' || part === 'far' ? [{ thrown: part, error: errorOf(focus) }] : []));
  const reference = liveViewReference(told.flatMap(({ part, focus }) => (part === 'live view' ? [errorOf(focus)] : [])));
  const first = told[0]?.focus;
  const check = first === undefined ? null : checkEntered(shots, reference, first.depth);
  return check === null || first === undefined ? null : { check, shots: shots.length, reference, depth: first.depth, step: first.step };
}

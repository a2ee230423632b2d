// A bracket of corrections, from its pictures to its centre, beside the centre of the band that the light gave.
import { got, type Result } from '../../result.ts';
import { measureBracket, type BracketFault, type BracketMeasure, type BracketShot } from '../bracket.ts';
import { joinCentres, type JoinedCentre } from '../joinedCentre.ts';
import type { WithInterval } from '../withInterval.ts';
import type { BracketPart } from './bracketParts.ts';
import { liveViewReference } from './liveViewReference.ts';
import { errorOf, type SeriesPicture } from './seriesPicture.ts';

export interface BracketSeries {
  readonly shots: readonly (BracketShot & { /** Of its picture. */ readonly id: string })[];
  readonly reference: WithInterval | null;
  readonly measured: Result<BracketTold, BracketFault>;
}

export interface BracketTold {
  readonly measure: BracketMeasure;
  /** Null where the situation has no band. */
  readonly joined: JoinedCentre | null;
  readonly band: WithInterval | null;
}

/** `band`: the centre that the light gave, in steps. Null where no shot counts yet. */
export function readBracket(pictures: readonly SeriesPicture[], parts: ReadonlyMap<string, BracketPart>, band: WithInterval | null): BracketSeries | null {
  const told = pictures.flatMap(({ id, reading: { focus } }) => (focus.ok ? [{ id, part: parts.get(id), error: errorOf(focus.value) }] : []));
  const shots = told.flatMap(({ id, part, error }) => (typeof part === 'number' ? [{ id, correction: part, error }] : []));
  if (shots.length === 0) return null;
  const reference = liveViewReference(told.flatMap(({ part, error }) => (part === 'live view' ? [error] : [])));
  const measured = measureBracket(shots, reference);
  if (!measured.ok) return { shots, reference, measured };
  const measure = measured.value;
  return { shots, reference, measured: got({ measure, band, joined: band === null ? null : joinCentres(band, measure.centre) }) };
}

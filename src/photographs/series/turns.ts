// The pictures of a series that took a turn in its order, as they were taken; and beside them those that stay out, each with its reason.
import type { Kit } from '../../kit/kit.ts';
import { outOfSeries, type OutOfSeries } from './outOfSeries.ts';
import { inOrderTaken, type SeriesPicture } from './seriesPicture.ts';

export interface Turns {
  /** Focus need not be told in all of them. */
  readonly taken: readonly SeriesPicture[];
  readonly out: ReadonlyMap<string, OutOfSeries>;
}

/** A picture without any target was not taken for the series. `situation`: the id of the one it is of; null where that is not known. */
export function turnsOf(pictures: readonly SeriesPicture[], kit: Kit, situation: string | null): Turns {
  const seen = inOrderTaken(pictures).filter(({ reading: { target } }) => target.ok || target.fault.is !== 'no print');
  const out = outOfSeries(seen, kit, situation);
  return { taken: seen.filter(({ id }) => !out.has(id)), out };
}

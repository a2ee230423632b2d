// How the belief narrowed, in pixels: a row for each stop of a replay, the first on top, with the range that held the centre
// with 95 % and the value that was held. In line with the strip below it, so that the rows run down into its hill.
import { centreInterval } from '../../sweep/belief/belief.ts';
import type { ReplayedStage } from '../../sweep/replayed.ts';
import type { Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { axisOf } from '../strip/geometry.ts';
import { wholeOf } from '../strip/window.ts';

export interface FilmStop {
  readonly interval: { readonly from: number; readonly to: number };
  /** What was held to come here; null where nothing was. */
  readonly hold: { readonly value: Steps; readonly counts: 'in' | 'out' } | null;
}

export interface Narrowing {
  readonly height: number;
  readonly rows: readonly NarrowingRow[];
}

interface NarrowingRow {
  readonly y: number;
  readonly left: number;
  readonly right: number;
  readonly hold: { readonly x: number; readonly counts: 'in' | 'out' } | null;
}

/** All rows together, as long as a row stays high enough to be told from the next. */
const TALL = 120;
const [LOWEST, HIGHEST] = [5, 10];

/** What each stage of a replay knew of the centre. */
export const stopsOf = (stages: readonly ReplayedStage[]): FilmStop[] =>
  stages.map(({ is, state: { belief, holds } }) => {
    const last = holds.at(-1);
    return { interval: centreInterval(belief), hold: is === 'held' && last ? { value: last.value, counts: last.reading.counts } : null };
  });

/** Laid out over the whole scale at a width in pixels; a range that runs past the scale ends with it. */
export function narrowingOf(stops: readonly FilmStop[], scale: Scale, width: number): Narrowing {
  const { xOf } = axisOf(scale, wholeOf(scale), width);
  const row = Math.min(HIGHEST, Math.max(LOWEST, TALL / stops.length));
  const within = (value: number): number => xOf(Math.min(scale.max, Math.max(scale.min, value)));
  return {
    height: row * stops.length,
    rows: stops.map(({ interval, hold }, index) => ({
      y: row * (index + 0.5),
      left: within(interval.from),
      right: within(interval.to),
      hold: hold && { x: xOf(hold.value), counts: hold.counts },
    })),
  };
}

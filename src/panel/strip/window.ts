// Which part of the scale the strip shows: all of it while little is known, and only what matters once the belief is
// narrow. Windows come in a few lengths with aligned starts, so that the strip stands still from one hold to the next.
import type { Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';

/** First and last value shown. */
export interface Window {
  readonly from: Steps;
  readonly to: Steps;
  readonly whole: boolean;
}

/** What must be seen: where the centre may lie, the values that held, and the ones being worked on. */
export interface Matter {
  readonly interval: { readonly from: number; readonly to: number };
  readonly holds: readonly { readonly value: Steps; readonly counts: 'in' | 'out' }[];
  readonly current: Steps | null;
}

/** Lengths of a window in steps of the scale, and the grid that its start keeps to. */
const LENGTHS = [10, 15, 20];
const GRID = 5;
/** Values shown beyond the outermost one that matters, where the scale has them. */
const MARGIN = 1;

/** All of the scale. */
export const wholeOf = ({ min, max }: Scale): Window => ({ from: min, to: max, whole: true });

/** The shortest window that holds everything that matters. */
export function windowOf(scale: Scale, matter: Matter): Window {
  const { min, max, step } = scale;
  const whole = wholeOf(scale);
  const reach = reachOf(matter);
  const low = Math.max(min, reach.low - MARGIN * step);
  const high = Math.min(max, reach.high + MARGIN * step);
  for (const length of LENGTHS.map((count) => count * step)) {
    if (length * 1.25 >= max - min) return whole;
    const aligned = Math.floor(low / (GRID * step)) * GRID * step;
    const from = onScale(scale, Math.min(Math.max(aligned, min), max - length));
    if (from <= low && from + length >= high) return { from, to: (from + length) as Steps, whole: false };
  }
  return whole;
}

function reachOf({ interval, holds, current }: Matter): { low: number; high: number } {
  const centre = (interval.from + interval.to) / 2;
  const held = holds.filter(({ counts }) => counts === 'in').map(({ value }) => value);
  const out = holds.filter(({ counts }) => counts === 'out').map(({ value }) => value);
  const below = Math.max(...out.filter((value) => value < Math.min(centre, ...held)));
  const above = Math.min(...out.filter((value) => value > Math.max(centre, ...held)));
  const points = [interval.from, interval.to, ...held, below, above, ...(current === null ? [] : [current])];
  const known = points.filter(Number.isFinite);
  return { low: Math.min(...known), high: Math.max(...known) };
}

const onScale = ({ min, step }: Scale, value: number): Steps => (min + Math.floor((value - min) / step) * step) as Steps;

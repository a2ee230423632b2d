// One value for several situations. Every value of the scale is tried. Two ways to weigh: the smallest worst share of a
// half-band, or the smallest squared error weighted by how often each situation is used. Of two values as good, the one
// with the smaller sum of errors, then the one nearer zero, then the lower.
import { valuesOf, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { fitOf, type Band, type Fit } from './band.ts';

/** `use`: a weight for each situation by id, not negative; what is not named counts as 1. */
export type Weighing = { readonly by: 'worst share' } | { readonly by: 'use'; readonly use: ReadonlyMap<string, number> };

export interface Choice {
  readonly value: Steps;
  readonly fits: readonly Fit[];
}

const SAME = 1e-9;

/** Null without a band, or when none of them is ever used. */
export function oneValue(scale: Scale, bands: readonly Band[], weighing: Weighing): Choice | null {
  const counted = bands.filter(({ id }) => weightOf(id, weighing) > 0);
  if (counted.length === 0) return null;
  let best: { readonly value: Steps; readonly rank: readonly number[] } | null = null;
  for (const value of valuesOf(scale)) {
    const rank = rankOf(value, counted, weighing);
    if (!best || comesBefore(rank, best.rank)) best = { value, rank };
  }
  return best && { value: best.value, fits: bands.map((band) => fitOf(best.value, band)) };
}

function rankOf(value: Steps, bands: readonly Band[], weighing: Weighing): readonly number[] {
  const fits = bands.map((band) => fitOf(value, band));
  const cost =
    weighing.by === 'worst share'
      ? Math.max(...fits.map(({ share }) => share))
      : fits.reduce((sum, { band, error }) => sum + weightOf(band.id, weighing) * error ** 2, 0);
  const errors = fits.reduce((sum, { error }) => sum + Math.abs(error), 0);
  return [cost, errors, Math.abs(value)];
}

function comesBefore(one: readonly number[], other: readonly number[]): boolean {
  for (const [at, cost] of one.entries()) {
    const difference = cost - (other[at] ?? 0);
    if (Math.abs(difference) > SAME) return difference < 0;
  }
  return false;
}

const weightOf = (id: string, weighing: Weighing): number => (weighing.by === 'use' ? (weighing.use.get(id) ?? 1) : 1);

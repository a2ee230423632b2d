// The taught rule over every band there is: an observer without noise, run to both ends, must give the values that hold
// and their middle (common practice, no source).
import type { Outcome } from '../../src/sweep/end/outcome.ts';
import type { Scale } from '../../src/sweep/scale.ts';
import { steps } from '../../src/units.ts';
import { noiseFreeSweeps } from '../sweep/noiseFree.ts';
import { most, shown, type Family, type Figure } from './figure.ts';

export const taughtRule: Family = {
  name: 'taught rule',
  async run({ tell }) {
    return [10, 20].flatMap((limit): Figure[] => {
      tell(`every band inside \u00b1${limit}`);
      const { bands, otherwise } = everyBand({ min: steps(-limit), max: steps(limit), step: 1 });
      return [shown(`bands inside \u00b1${limit}`, bands), most(`bands inside \u00b1${limit} that come out otherwise`, otherwise, 0)];
    });
  },
};

function everyBand(scale: Scale): { bands: number; otherwise: number } {
  const sweep = noiseFreeSweeps(scale);
  let bands = 0;
  let otherwise = 0;
  for (let low = scale.min + 1; low < scale.max; low++) {
    for (let high = low; high < scale.max; high++) {
      bands++;
      if (!isTaught(sweep(low, high), low, high)) otherwise++;
    }
  }
  return { bands, otherwise };
}

function isTaught(outcome: Outcome | null, low: number, high: number): boolean {
  if (outcome?.found !== 'band' || outcome.ends !== 'seen') return false;
  const middle = (low + high) / 2;
  return outcome.low === low && outcome.high === high && outcome.centre === middle && Math.abs(outcome.chosen - middle) <= 0.5;
}

// Once the centre is sure: the holds that show the two ends. Of the marginal values still missing it picks the one
// that costs the least time for its chance of closing the matter.
import { chancesOfIn, stimulusOf } from '../belief/belief.ts';
import type { End } from '../end/ends.ts';
import type { Steps } from '../../units.ts';
import { secondsOfHold } from './seconds.ts';
import type { Standing, Suggestion } from './suggestion.ts';

interface Missing {
  readonly value: Steps;
  readonly side: 'low' | 'high';
  readonly part: 'last' | 'next';
  /** The chance that one hold there closes this part of the end. */
  readonly chance: number;
}

/** The marginal value to hold next, or null when both ends are as well known as the care asks. */
export function marginalValue(standing: Standing): Suggestion | null {
  const { belief, readiness, dialled, holdTime, skipped } = standing;
  const ends = 'ends' in readiness ? readiness.ends : null;
  if (!ends) return null;
  const chances = chancesOfIn(belief);
  const chanceOfIn = (value: Steps): number => chances[stimulusOf(belief.model, value)] ?? 0;
  const missing = [...missingOf(ends.low, 'low'), ...missingOf(ends.high, 'high')].filter(
    ({ value }) => !skipped.includes(value),
  );
  const cost = ({ value, chance }: Missing): number =>
    secondsOfHold(dialled, value, belief.model.scale.step, chanceOfIn(value), holdTime) / chance;
  if (missing.length === 0) return null;
  const { value, side, part } = missing.reduce((best, next) => (cost(next) < cost(best) ? next : best));
  return { value, reason: { because: 'end', side, part } };

  function missingOf(end: End, side: 'low' | 'high'): Missing[] {
    switch (end.known) {
      case 'past':
      case 'settled':
        return [];
      case 'seen':
        return standing.care === 'thorough' ? [waveringOf(end.last, end.next, side)] : [];
      case 'open': {
        const found: Missing[] = [];
        const { last, next } = end;
        if (next !== null && !end.heldOut) found.push({ value: next, side, part: 'next', chance: 1 - chanceOfIn(next) });
        if (!end.heldIn || next === null) found.push({ value: last, side, part: 'last', chance: chanceOfIn(last) });
        return found;
      }
    }
  }

  function waveringOf(last: Steps, next: Steps, side: 'low' | 'high'): Missing {
    const doubt = (value: Steps): number => Math.abs(chanceOfIn(value) - 0.5);
    return doubt(last) < doubt(next) ? { value: last, side, part: 'last', chance: 1 } : { value: next, side, part: 'next', chance: 1 };
  }
}

// The holds that would show the two ends: the last value that holds and the next one out, on either side, as far as the
// chosen care still wants them.
import { chancesOfIn, stimulusOf } from '../belief/belief.ts';
import type { End } from '../end/ends.ts';
import type { Steps } from '../../units.ts';
import { secondsOfHold } from './seconds.ts';
import type { SearchState } from './searchState.ts';

interface Part {
  readonly value: Steps;
  readonly side: 'low' | 'high';
  readonly part: 'last' | 'next';
}

/** A missing part, with the chance that one hold there closes it, and the chance that the value holds. */
interface MissingPart extends Part {
  readonly chance: number;
  readonly chanceOfIn: number;
}

/** Of the missing parts not passed over, the one that costs the least time for its chance of being closed. */
export function cheapestOf(state: SearchState): Part | null {
  const { belief, dialled, holdTime, skipped } = state;
  const missing = missingParts(state).filter(({ value }) => !skipped.includes(value));
  const cost = ({ value, chance, chanceOfIn }: MissingPart): number => secondsOfHold(dialled, value, belief.model.scale.step, chanceOfIn, holdTime) / chance;
  return missing.length > 0 ? missing.reduce((best, next) => (cost(next) < cost(best) ? next : best)) : null;
}

/** Every part of an end that the care still wants; none where no value is believed to hold. */
export function missingParts({ belief, readiness, care }: SearchState): MissingPart[] {
  const ends = 'ends' in readiness ? readiness.ends : null;
  if (!ends) return [];
  const chances = chancesOfIn(belief);
  const chanceOfIn = (value: Steps): number => chances[stimulusOf(belief.model, value)] ?? 0;
  const sides = [
    ['low', ends.low],
    ['high', ends.high],
  ] as const;
  return sides.flatMap(([side, end]) => partsOf(end, side)).map(withChances);

  function partsOf(end: End, side: Part['side']): Part[] {
    if (end.known === 'open' || (end.known === 'as before' && care === 'thorough')) return openParts(end, side);
    if (end.known !== 'seen' || care !== 'thorough') return [];
    const { last, next } = end;
    const doubt = (value: Steps): number => Math.abs(chanceOfIn(value) - 0.5);
    return [doubt(last) < doubt(next) ? { value: last, side, part: 'last' } : { value: next, side, part: 'next' }];
  }

  function withChances(part: Part): MissingPart {
    const inside = chanceOfIn(part.value);
    return { ...part, chanceOfIn: inside, chance: part.part === 'last' ? inside : 1 - inside };
  }
}

/** At a limit of the scale there is no next value: only more holds at the limit itself can show that the band runs past. */
function openParts({ last, next, heldIn, heldOut }: Extract<End, { known: 'open' | 'as before' }>, side: Part['side']): Part[] {
  const parts: Part[] = [];
  if (next !== null && !heldOut) parts.push({ value: next, side, part: 'next' });
  if (next === null || !heldIn) parts.push({ value: last, side, part: 'last' });
  return parts;
}

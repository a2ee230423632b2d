// English: why a value is held next, as it follows the value. "+6: halfway between +3 (steady) and +9 (dark)".
import type { Landmark } from '../../sweep/next/reason.ts';
import type { Suggestion } from '../../sweep/next/suggestion.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { LIGHT } from './verdict.ts';
import { write } from './write.ts';

export function reason({ value, reason: why }: Suggestion): string {
  switch (why.because) {
    case 'start':
      return 'the likeliest centre, to begin with';
    case 'remembered': {
      const when = write.monthAndYear(why.from.at);
      return why.from.of === 'situation' ? `where the centre was in ${when}` : `near the centre of this pair in ${when}, at another focal length or distance`;
    }
    case 'between': {
      const isHalfway = why.below.value + why.above.value === 2 * value;
      return `${isHalfway ? 'halfway between' : 'between'} ${landmark(why.below)} and ${landmark(why.above)}`;
    }
    case 'beyond':
      return why.side === 'above' ? `above ${landmark(why.of)}` : `below ${landmark(why.of)}`;
    case 'surer':
      return why.of.light === 'untold' ? 'once more, to be sure: it failed before' : `once more, to be sure: the light was ${lightOf(why.of)} before`;
    case 'again':
      return 'once more, because the last answer there was unexpected';
    case 'end':
      return END[why.part][why.side];
    case 'unmoved':
      return 'to check that the focus has not moved since the first holds';
    case 'proof':
      return 'the value to enter, which has not been held yet';
    case 'doubted':
      return 'once more, because the answer there does not fit the others';
    case 'yours':
      return 'your own choice';
  }
}

const END = {
  last: { low: 'to check the last value of the band, at the low end', high: 'to check the last value of the band, at the high end' },
  next: { low: 'to check the first value below the band', high: 'to check the first value above the band' },
} as const;

/** The same as it is said before the first hold; null where there is nothing to add to the value. */
export function startAloud({ reason: why }: Suggestion): string | null {
  if (why.because !== 'remembered') return null;
  const when = write.month(why.from.at);
  return why.from.of === 'situation' ? `where it was in ${when}` : `near where this pair was in ${when}`;
}

const landmark = (held: Landmark): string => `${writeSteps(held.value)} (${lightOf(held)})`;

/** A steady light that an arrow told against is told with its arrow, or it would contradict how it counts. */
const lightOf = ({ light, counts }: Landmark): string => (light === 'steady' && counts === 'out' ? 'steady with one arrow' : LIGHT[light]);

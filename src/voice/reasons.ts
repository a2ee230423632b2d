// Why a value is suggested, in words for the screen.
import type { Landmark } from '../sweep/next/reason.ts';
import type { Suggestion } from '../sweep/next/suggestion.ts';
import { writeSteps } from '../sweep/scale.ts';
import type { Moment } from '../units.ts';
import { LIGHT } from './vocabulary/en.ts';

/** The part of a sentence that follows the value: "+6, halfway between +3, which held, and +9, which stayed dark". */
export function reasonInWords({ value, reason }: Suggestion): string {
  switch (reason.because) {
    case 'start':
      return 'where the centre most likely is, to begin with';
    case 'remembered': {
      const when = monthOf(reason.from.at, 'numeric');
      return reason.from.of === 'situation'
        ? `where it was in ${when}, to begin with`
        : `near where this pairing was in ${when}, at another focal length or distance`;
    }
    case 'between': {
      const halfway = reason.below.value + reason.above.value === 2 * value ? 'halfway between' : 'between';
      return `${halfway} ${landmark(reason.below)}, and ${landmark(reason.above)}`;
    }
    case 'beyond':
      return `${reason.side} ${landmark(reason.of)}`;
    case 'surer':
      return `once more, to be surer: it ${didThere(reason.of)} before`;
    case 'again':
      return 'once more, because the last answer there was hardly to be expected';
    case 'end':
      return reason.part === 'last'
        ? `to see whether the ${reason.side} end of the band holds`
        : `to see whether the band ends before it, at the ${reason.side} end`;
    case 'unmoved':
      return 'to see that the focus has not moved since the first holds';
    case 'proof':
      return 'the value to enter, which has not been held yet';
    case 'doubted':
      return 'once more, because its verdict does not fit the others';
    case 'yours':
      return 'your own choice';
  }
}

/** The same as it is said before the first hold; null where there is nothing to add to the value. */
export function startAloud({ reason }: Suggestion): string | null {
  if (reason.because !== 'remembered') return null;
  const when = monthOf(reason.from.at);
  return reason.from.of === 'situation' ? `where it was in ${when}` : `near where this pairing was in ${when}`;
}

const monthOf = (at: Moment, year?: 'numeric'): string =>
  new Intl.DateTimeFormat('en', { month: 'long', year, timeZone: 'UTC' }).format(at);

const landmark = (held: Landmark): string => `${writeSteps(held.value)}, which ${didThere(held)}`;

/** A light that held although an arrow told against it is said so, or "held" would contradict how it counts. */
const didThere = ({ light, counts }: Landmark): string =>
  light === 'steady' && counts === 'out' ? 'held with one arrow' : LIGHT[light].did;

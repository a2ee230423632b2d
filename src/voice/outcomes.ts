// What came out of a sweep, in words: short for the ear, whole for the screen.
import type { BandOutcome, Outcome } from '../sweep/end/outcome.ts';
import { writeSteps } from '../sweep/scale.ts';
import { sayCorrection } from './numbers.ts';

export interface InWords {
  readonly spoken: string;
  readonly written: string;
}

export function outcomeInWords(outcome: Outcome): InWords {
  switch (outcome.found) {
    case 'band':
      return band(outcome);
    case 'past the limit':
      return pastTheLimit(outcome);
    case 'beyond the scale':
      return {
        spoken: `The band lies ${outcome.side} the scale.`,
        written:
          `The whole band lies ${outcome.side} the scale, so no correction reaches it. ` +
          'Check the focus and the bench once more; if it stays so, the pair needs service.',
      };
    case 'nothing':
      return {
        spoken: 'No value held.',
        written:
          'No value held steady. Check that the target is lit and square to the camera, that the lens is focused on it in ' +
          'live view and set to manual, and that the half-press is what lights the focus light on this body.',
      };
  }
}

function band({ low, high, centre, chosen, other, within, ends }: BandOutcome): InWords {
  const sure = `${Math.floor(within * 100)} % sure to be within one step`;
  const spoken = `${capital(sayCorrection(chosen))}.`;
  if (ends === 'believed') {
    return { spoken, written: `${writeSteps(chosen)}, ${sure}. The ends of the band were not both seen.` };
  }
  const held = low === high ? `Only ${writeSteps(low)} held` : `The band runs from ${writeSteps(low)} to ${writeSteps(high)}`;
  const even = other === null ? '' : ` Its centre, ${writeSteps(centre)}, lies between two values: ${writeSteps(other)} is as good.`;
  return { spoken, written: `${writeSteps(chosen)}, ${sure}. ${held}.${even}` };
}

function pastTheLimit({ side, visible, bound }: Extract<Outcome, { found: 'past the limit' }>): InWords {
  if (visible === null || bound === null) {
    return {
      spoken: 'Every value holds.',
      written: 'Every value of the scale holds, so neither end of the band is seen and no centre can be told.',
    };
  }
  const limit = writeSteps(2 * bound - visible);
  const least = side === 'high' ? `${writeSteps(bound)} or higher` : `${writeSteps(bound)} or lower`;
  return {
    spoken: `The band runs past ${sayCorrection(2 * bound - visible)}.`,
    written: `The band has one end at ${writeSteps(visible)} and runs past ${limit}, the limit of the scale. Its centre is ${least}.`,
  };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

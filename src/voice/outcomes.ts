// What came out of a sweep, in words: short for the ear, whole for the screen.
import type { BandOutcome, CarriedOutcome, Outcome } from '../sweep/end/outcome.ts';
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
    case 'carried over':
      return carriedOver(outcome);
    case 'beyond the scale':
      return {
        spoken: `The band lies ${outcome.side} the scale.`,
        written: `The whole band lies ${outcome.side} the scale, so no correction reaches it.`,
      };
    case 'nothing':
      return {
        spoken: 'No value held.',
        written: 'No value held steady, so there is none to enter.',
      };
  }
}

function band({ low, high, centre, chosen, other, within, ends }: BandOutcome): InWords {
  const sure = `Enter ${writeSteps(chosen)}: ${Math.min(99, Math.floor(within * 100))} % sure to be within one step of the centre`;
  const spoken = `${capital(sayCorrection(chosen))}.`;
  if (ends === 'believed') {
    return { spoken, written: `${sure}. The ends of the band were not both seen.` };
  }
  const held = low === high ? `Only ${writeSteps(low)} held` : `The band runs from ${writeSteps(low)} to ${writeSteps(high)}`;
  const even = other === null ? '' : ` Its centre lies at ${writeSteps(centre)}, between two values: ${writeSteps(other)} is as good.`;
  return { spoken, written: `${sure}. ${held}.${even}` };
}

function pastTheLimit({ side, visible, bound }: Extract<Outcome, { found: 'past the limit' }>): InWords {
  if (visible === null || bound === null) {
    return {
      spoken: 'Every value holds.',
      written: 'Every value of the scale holds, so no centre can be told.',
    };
  }
  const limit = writeSteps(2 * bound - visible);
  const least = side === 'high' ? `${writeSteps(bound)} or higher` : `${writeSteps(bound)} or lower`;
  return {
    spoken: `The band runs past ${sayCorrection(2 * bound - visible)}.`,
    written: `The band has one end at ${writeSteps(visible)} and runs past ${limit}, the limit of the scale. Its centre is ${least}.`,
  };
}

function carriedOver({ visible, centre, interval, chosen, inside, service, ends }: CarriedOutcome): InWords {
  const seen = visible === null ? 'Nothing held in sharp focus' : `One end of the band is at ${writeSteps(visible)}`;
  const about = `${writeSteps(Math.floor(2 * interval.from) / 2)} to ${writeSteps(Math.ceil(2 * interval.to) / 2)}`;
  const measured = `${seen}; half its width, measured with the focus set aside, puts the centre at about ${writeSteps(centre)} (${about} with 95 %).`;
  const open = ends === 'believed' ? ' The ends of that width were not both seen.' : '';
  if (!service) return { spoken: `${capital(sayCorrection(chosen))}.`, written: `${writeSteps(chosen)}. ${measured}${open}` };
  const still = inside ? `${writeSteps(chosen)} comes nearest and still holds` : 'No correction reaches it';
  return {
    spoken: `The centre lies beyond ${sayCorrection(chosen)}. It needs service.`,
    written: `${measured}${open} ${still}; the pair needs service.`,
  };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

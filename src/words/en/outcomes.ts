// English: what came out of a sweep, short for the ear and whole for the eye.
import type { BandOutcome, CarriedOutcome, Outcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { sayCorrection } from '../../hearing/languages/en/sayCorrection.ts';
import type { InWords } from '../inWords.ts';
import { sentences } from './sentence.ts';
import { write } from './write.ts';

export function outcome(found: Outcome): InWords {
  switch (found.found) {
    case 'band':
      return band(found);
    case 'past the limit':
      return pastTheLimit(found);
    case 'carried over':
      return carriedOver(found);
    case 'beyond the scale':
      return BEYOND[found.side];
    case 'nothing':
      return { spoken: 'No value was steady.', written: 'The light was steady at no value, so there is no value to enter.' };
  }
}

const BEYOND = {
  above: { spoken: 'The band lies above the range.', written: 'The whole band lies above the range of corrections, so no correction reaches it.' },
  below: { spoken: 'The band lies below the range.', written: 'The whole band lies below the range of corrections, so no correction reaches it.' },
} as const;

function band({ low, high, centre, chosen, other, within, ends }: BandOutcome): InWords {
  const spoken = sentences(sayCorrection(chosen));
  const enter = `Enter ${writeSteps(chosen)}: ${write.chance(within)} sure within one step of the centre.`;
  if (ends === 'believed') return { spoken, written: `${enter} At least one end of the band was not seen.` };
  const from = low === high ? `The band is ${writeSteps(low)} alone.` : `The band runs from ${writeSteps(low)} to ${writeSteps(high)}.`;
  if (other === null) return { spoken, written: `${enter} ${from}` };
  return { spoken, written: `${enter} ${from} Its centre lies at ${write.signed(centre, 1)}, between two values: ${writeSteps(other)} is as good.` };
}

function pastTheLimit({ side, visible, bound }: Extract<Outcome, { found: 'past the limit' }>): InWords {
  if (visible === null || bound === null) {
    return { spoken: 'Every value is steady.', written: 'The light is steady at every value, so the centre cannot be found.' };
  }
  const limit = 2 * bound - visible;
  const least = side === 'high' ? `${write.signed(bound, 1)} or higher` : `${write.signed(bound, 1)} or lower`;
  return {
    spoken: `The band runs past ${sayCorrection(limit)}.`,
    written: `One end of the band is at ${writeSteps(visible)}. The other lies past ${writeSteps(limit)}, the last correction. The centre is ${least}.`,
  };
}

function carriedOver({ visible, centre, interval, chosen, inside, service, ends }: CarriedOutcome): InWords {
  const from = write.signed(Math.floor(2 * interval.from) / 2, 1);
  const to = write.signed(Math.ceil(2 * interval.to) / 2, 1);
  const measured = [
    visible === null ? 'In sharp focus the light was steady at no value.' : `In sharp focus one end of the band is at ${writeSteps(visible)}.`,
    `Half the width, measured with the focus set aside, puts the centre at about ${write.signed(centre, 1)} (${from} to ${to}, ${write.percent(0.95)} sure).`,
    ...(ends === 'believed' ? ['At least one end of that width was not seen.'] : []),
  ].join(' ');
  if (!service) return { spoken: sentences(sayCorrection(chosen)), written: `The value to enter is ${writeSteps(chosen)}. ${measured}` };
  const still = inside
    ? `At ${writeSteps(chosen)}, the nearest correction, the light is still steady, but the pair needs service.`
    : 'No correction reaches it, so the pair needs service.';
  return { spoken: `The centre lies beyond ${sayCorrection(chosen)}. The pair needs service.`, written: `${measured} ${still}` };
}

// The name of each trouble: short for the ear, a whole sentence for the screen.
import { writeSteps } from '../sweep/scale.ts';
import type { ArrowsContradict, Hole, Trouble } from '../sweep/trouble/trouble.ts';
import type { InWords } from './outcomes.ts';

export function troubleInWords(trouble: Trouble): InWords {
  switch (trouble.trouble) {
    case 'flickers everywhere':
      return { spoken: 'The light flickers at every value.', written: 'The light fails at every value, mostly by flickering.' };
    case 'never lights':
      return { spoken: 'The light never comes on.', written: 'The light stays dark at every value.' };
    case 'lights everywhere':
      return { spoken: 'Every value holds.', written: 'The light holds at every value, up to both limits of the scale.' };
    case 'hole in the band':
      return { spoken: 'The band has a gap.', written: gap(trouble) };
    case 'arrows contradict the lights':
      return { spoken: 'The arrows contradict the lights.', written: ARROWS[trouble.how] };
    case 'focus moved':
      return { spoken: 'The focus has moved.', written: trouble.seen ? 'The focus had moved during this session.' : 'The focus seems to have moved during this sweep.' };
  }
}

function gap({ from, to }: Hole): string {
  return from === to
    ? `${writeSteps(from)} fails, with values that hold on both sides.`
    : `${writeSteps(from)} to ${writeSteps(to)} fail, with values that hold on both sides.`;
}

const ARROWS: Record<ArrowsContradict['how'], string> = {
  'turned round': 'The arrows point the other way than the body is set to in the kit.',
  'turned midway': 'Part of the way the arrows pointed one way, then the other.',
  'by chance': 'The arrows point up and down without regard to the lights.',
};

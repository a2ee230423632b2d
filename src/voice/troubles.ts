// Each trouble in one short sentence, to be said and shown when it is found.
import type { Trouble } from '../sweep/trouble/trouble.ts';

export const TROUBLE_SAID: Record<Trouble['trouble'], string> = {
  'flickers everywhere': 'The light flickers at every value.',
  'never lights': 'The light never comes on.',
  'lights everywhere': 'Every value holds.',
  'hole in the band': 'The band has a gap.',
  'arrows contradict the lights': 'The arrows contradict the lights.',
  'focus moved': 'The focus has moved.',
  'verdicts misjudged': 'Some verdicts do not fit the others.',
  'band drifts': 'The band drifts.',
  play: 'The direction you turn matters.',
};

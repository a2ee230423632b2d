// English: each trouble in one short sentence, said and shown when it is found.
import type { Trouble } from '../../sweep/trouble/trouble.ts';

export const TROUBLE_SAID: Readonly<Record<Trouble['trouble'], string>> = {
  'flickers everywhere': 'The light flickers at every value.',
  'never lights': 'The light never comes on.',
  'lights everywhere': 'Every value is steady.',
  'hole in the band': 'The band has a gap.',
  'arrows contradict the lights': 'The arrows contradict the light.',
  'focus moved': 'The focus has moved.',
  'verdicts misjudged': 'Some answers do not fit the others.',
  'band drifts': 'The band drifts.',
  play: 'The way you turn the dial matters.',
};

// French: each trouble in one short sentence, said and shown when it is found.
import type { Trouble } from '../../sweep/trouble/trouble.ts';

export const TROUBLE_SAID: Readonly<Record<Trouble['trouble'], string>> = {
  'flickers everywhere': 'Le témoin clignote partout.',
  'never lights': 'Le témoin ne s’allume jamais.',
  'lights everywhere': 'Le témoin est fixe partout.',
  'hole in the band': 'La bande a un trou.',
  'arrows contradict the lights': 'Les flèches contredisent le témoin.',
  'focus moved': 'La mise au point a bougé.',
  'verdicts misjudged': 'Des réponses en contredisent d’autres.',
  'band drifts': 'La bande dérive.',
  play: 'Le sens de réglage compte.',
};

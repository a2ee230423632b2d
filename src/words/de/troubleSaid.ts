// German: each trouble in one short sentence, said and shown when it is found.
import type { Trouble } from '../../sweep/trouble/trouble.ts';

export const TROUBLE_SAID: Readonly<Record<Trouble['trouble'], string>> = {
  'flickers everywhere': 'Das Licht flackert bei jedem Wert.',
  'never lights': 'Das Licht geht nie an.',
  'lights everywhere': 'Jeder Wert ist stabil.',
  'hole in the band': 'Das Band hat eine Lücke.',
  'arrows contradict the lights': 'Die Pfeile widersprechen dem Licht.',
  'focus moved': 'Der Fokus hat sich verschoben.',
  'verdicts misjudged': 'Einige Antworten passen nicht zu den anderen.',
  'band drifts': 'Das Band driftet.',
  play: 'Die Einstellrichtung zählt.',
};

// German: the words a person is taught to say. They were chosen to be far apart in sound, and not to be what people say to
// each other all the time: "gleich" is "equal" and also "in a moment", "fertig" is asked across every room.
import type { Word } from '../../../sweep/inputs.ts';

export const GERMAN_TAG = 'de-DE';

export const TAUGHT: Record<Word, string> = {
  solid: 'stabil',
  delayed: 'zögert',
  flicker: 'flackert',
  nothing: 'dunkel',
  left: 'links',
  right: 'rechts',
  balanced: 'mittig',
  lopsided: 'ungleich',
  holding: 'gedrückt',
  undo: 'rückgängig',
  repeat: 'noch einmal',
  pause: 'pause',
  resume: 'fortsetzen',
  skip: 'auslassen',
  accept: 'annehmen',
  'go on': 'weiter',
  set: 'wert',
  same: 'dasselbe',
  shifted: 'verschoben',
  finish: 'beenden',
  help: 'hilfe',
  entered: 'eingestellt',
  next: 'nächstes',
  back: 'zurück',
  'far view': 'fernsicht',
};

// French: the words a person is taught to say. They were chosen to be far apart in sound. What "in-", "dé-" or "a-" turns into its
// opposite ("stable", "égal", "équilibré", "symétrique") is left out on purpose: a first syllable is easily missed.
import type { Word } from '../../../sweep/inputs.ts';

export const FRENCH_TAG = 'fr-FR';

export const TAUGHT: Record<Word, string> = {
  solid: 'fixe',
  delayed: 'tardif',
  flicker: 'clignote',
  nothing: 'éteint',
  left: 'gauche',
  right: 'droite',
  balanced: 'ensemble',
  lopsided: 'bancal',
  holding: 'mi-course',
  undo: 'annuler',
  repeat: 'répète',
  pause: 'pause',
  resume: 'reprends',
  skip: 'ignore',
  accept: 'accepte',
  'go on': 'continue',
  set: 'valeur',
  same: 'identique',
  shifted: 'décalé',
  finish: 'termine',
  help: 'aide-moi',
  entered: 'saisi',
  next: 'suivant',
  back: 'précédent',
  'far view': 'vue de loin',
};

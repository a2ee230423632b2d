// Spanish: the words a person is taught to say. They were chosen to be far apart in the sounds of Spanish, and from what is said in the
// room all the time: "nada", "tarde", "vale" and "igual" are not taught. "No se ha movido" loses its first word too easily.
import type { Word } from '../../../sweep/inputs.ts';

export const SPANISH_TAG = 'es-ES';

export const TAUGHT: Record<Word, string> = {
  solid: 'firme',
  delayed: 'demora',
  flicker: 'parpadea',
  nothing: 'sin luz',
  left: 'izquierda',
  right: 'derecha',
  balanced: 'parejas',
  lopsided: 'torcidas',
  holding: 'mantengo',
  undo: 'deshacer',
  repeat: 'repite',
  pause: 'pausa',
  resume: 'retoma',
  skip: 'omite',
  accept: 'acepto',
  'go on': 'prosigue',
  set: 'pon',
  same: 'intacto',
  shifted: 'movido',
  finish: 'termina',
  help: 'ayuda',
  entered: 'guardado',
  next: 'siguiente',
  back: 'atrás',
  'far view': 'en grande',
};

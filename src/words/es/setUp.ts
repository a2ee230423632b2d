// Spanish: the set-up walk.
import type { StepOf } from '../../optics/setUp/step.ts';
import type { StepId } from '../../optics/setUp/stepIds.ts';
import type { Each, SetUpWords } from '../setUpWords.ts';
import { sentences } from './sentence.ts';
import { DRAWN } from './stepsDrawn.ts';
import { SHOWN } from './stepsShown.ts';
import { SPOKEN } from './stepsSpoken.ts';
import { write } from './write.ts';

const DONE = 'Montaje hecho. Listo para la primera prueba.';

const of = <Id extends StepId>(each: Each, step: StepOf<Id> & { readonly id: Id }): string => each[step.id](step);

export const words: SetUpWords = {
  title: 'Montaje guiado',
  progress: { label: 'Avance', at: (step, all) => `Paso ${write.number(step)} de ${write.number(all)}`, done: 'Todo hecho' },
  noAperture: 'Indique antes en el banco la abertura máxima.',
  speak: (what) => (what === 'done' ? DONE : of(SPOKEN, what)),
  show: (step) => of(SHOWN, step),
  pictures: DRAWN,
  step: {
    label: 'Paso',
    before: 'Ya hecho.',
    liveView: { ask: '¿Está la vista en vivo en su máxima nitidez?', sharp: 'Está nítida', not: 'No lo está' },
    keep: 'Guardar la lectura',
    kept: (reading) => sentences('guardado', reading),
  },
  done: {
    label: 'Montado',
    tooLate: 'Ya se hizo la primera prueba, así que el montaje no se guarda con este barrido. Hágalo antes del siguiente.',
  },
  leadsTo: 'Ir a la primera prueba',
  means: 'hecho: paso siguiente',
  also: 'También vale ahora',
};

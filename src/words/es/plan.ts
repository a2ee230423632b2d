// Spanish: the plan of a job.
import type { Change } from '../../logbook/plan/changes.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { seconds, type Seconds } from '../../units.ts';
import { byUnit } from '../countryInUse.ts';
import { line } from '../line.ts';
import type { PlanWords } from '../planWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const CHANGES: readonly (readonly [keyof Change, string])[] = [
  ['tripod', 'mueva el trípode'],
  ['body', 'cambie el cuerpo'],
  ['lens', 'cambie el objetivo'],
  ['converter', 'cambie el convertidor'],
  ['zoom', 'gire el zoom'],
];

/** In whole minutes, one at least. */
function minutes(time: Seconds): string {
  const whole = Math.max(1, Math.round(time / 60));
  return whole < 60 ? write.unit(whole, 'minute') : write.duration(seconds(whole * 60));
}

const measuredOf = (done: number, all: number): string => `${write.number(done)} de ${write.number(all)} ${all === 1 ? 'medida' : 'medidas'}`;

export const words: PlanWords = {
  title: 'Plan',
  replaces: 'Un plan nuevo sustituye al anterior. Lo medido sigue en el cuaderno.',
  form: {
    bodies: 'Cuerpos',
    lenses: 'Objetivos',
    converters: 'También con',
    zooms: 'Zooms',
    ends: { both: 'Ambos extremos', wide: 'Solo angular', tele: 'Solo tele' },
    distances: {
      get label() {
        return byUnit({ m: 'Distancias, m', ft: 'Distancias, ft' });
      },
      get hint() {
        return byUnit({
          m: 'Por ejemplo, 2,5 8. Vacío: cincuenta distancias focales en cada caso.',
          ft: 'Por ejemplo, 8 25. Vacío: cincuenta distancias focales en cada caso.',
        });
      },
      get fault() {
        return byUnit({
          m: 'Indique las distancias en metros, de 0,05 a 500, separadas por un espacio.',
          ft: 'Indique las distancias en pies, de 0,17 a 1640, separadas por un espacio.',
        });
      },
    },
    make: 'Hacer el plan',
    fault: (fault) => {
      switch (fault.is) {
        case 'no body':
          return 'Elija al menos un cuerpo.';
        case 'no lens':
          return 'Elija al menos un objetivo.';
        case 'no focal length':
          return `Indique antes en el equipo la distancia focal de ${fault.lens} y vuelva a elegirlo.`;
      }
    },
    unfit: 'No es válido. Revise lo que ha elegido.',
  },
  measured: 'Medido',
  next: 'Medir lo siguiente',
  underWay: 'Hay un barrido en curso. Termínelo antes desde la pantalla de inicio.',
  anew: 'Hacer un plan nuevo',
  pace: ({ perSweep, sweeps }) =>
    sweeps === 0
      ? `Mientras no termine un barrido, el tiempo es una estimación, ${minutes(perSweep)} por barrido.`
      : `El tiempo sigue su propio ritmo, ${minutes(perSweep)} por barrido.`,
  progress: ({ done, all, left, next }) =>
    next === null
      ? [`${measuredOf(done, all)}.`, 'El plan está hecho.']
      : [`${measuredOf(done, all)}; cerca de ${minutes(left)} más.`, `Siguiente: ${next.lens}, ${place(next)}, ${next.body}.`],
  stations: 'Situaciones',
  details: (subject) => line([place(subject), subject.body]),
  is: { next: 'siguiente', 'to do': 'por hacer' },
  done: (value) => (value === null ? 'hecha: sin valor' : `hecha: ${writeSteps(value)}`),
  before: (change) => {
    const wanted = CHANGES.filter(([part]) => change[part]).map(([, what]) => what);
    return wanted.length === 0 ? '' : `Antes, ${write.list(wanted)}.`;
  },
  toEnter: 'Qué introducir',
  toEnterFor: (subject) => `Qué introducir para ${subject.lens}, ${place(subject)}, ${subject.body}`,
};

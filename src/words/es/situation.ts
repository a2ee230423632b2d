// Spanish: one situation of the logbook.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { seconds } from '../../units.ts';
import { line } from '../line.ts';
import type { SituationWords } from '../situationWords.ts';
import { driftTold } from './monthsOfDrift.ts';
import { shown } from './proved.ts';
import { write } from './write.ts';

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: 'hallado en un barrido',
  'by hand': 'introducido a mano',
  'from a table': 'de una tabla',
  'from another computer': 'de otro dispositivo',
};

const NO_VALUE: Readonly<Record<Measured['found'], string>> = {
  band: 'sin valor',
  value: 'sin valor',
  'carried over': 'fuera de rango',
  'past the limit': 'pasa del límite',
  'beyond the scale': 'fuera de rango',
  nothing: 'sin banda',
};

/** So many of the newest values stand in one line. */
const NEWEST = 6;

const HOLDS = { one: '# prueba', other: '# pruebas' };
const STEPS = { one: '# paso', other: '# pasos' };

/** A length on the range of corrections, to a tenth. */
const stepsOf = (value: number): string => (Math.round(value * 10) === 10 ? write.count(1, STEPS) : `${write.number(value, 1)} pasos`);

const SURE = `${write.percent(0.95)} de confianza`;
const INTERVALS = `con sus intervalos del ${write.percent(0.95)}`;

export const words: SituationWords = {
  gone: 'Esta situación ya no está en el cuaderno.',
  lastValue: 'Último valor',
  value: 'Valor que usar',
  dueAgain: 'Pendiente',
  toEnter: 'Qué introducir para este objetivo',
  photographs: 'Comprobarlo con fotos',
  recheck: 'Revisión rápida',
  anew: 'Volver a medirlo',
  measure: 'Medirlo',
  answer: {
    sure: ({ by, chosen, within }, value) => {
      if (by !== 'sweep') return CAME[by];
      if (within === null) return '';
      const sure = `${write.chance(within)} de confianza, ±1\u00a0paso`;
      return chosen === null || chosen === value ? sure : `${writeSteps(chosen)}: ${sure}`;
    },
    before: (measured) => {
      const values = measured.map(({ chosen, found }) => (chosen === null ? NO_VALUE[found] : writeSteps(chosen)));
      const newest = values.length > NEWEST ? ['\u2026', ...values.slice(-NEWEST)] : values;
      const since = measured[0] ? ` desde ${write.monthAndYear(measured[0].at)}` : '';
      return `Medido ${write.count(measured.length, { one: 'una vez', other: '# veces' })}${since}: ${newest.join(', ')}`;
    },
    notDue: 'Aún no hay que volver a medir.',
    moreReasons: (count) => write.count(count, { one: 'Un motivo más', other: '# motivos más' }),
  },
  rooms: {
    evidence: 'En qué se basa',
    kept: ({ measured, entries, proofs }) =>
      line([
        measured.length > 0 && write.count(measured.length, { one: '# medido', other: '# medidos' }),
        entries.length > 0 && write.count(entries.length, { one: '# introducido', other: '# introducidos' }),
        proofs.length > 0 && `${write.number(proofs.length)} con fotos`,
      ]) || 'aún nada',
    entering: 'Introducir',
    inCamera: (value) => (value === null ? 'aún nada introducido' : `${writeSteps(value)} está en la cámara`),
    others: 'Otras situaciones de este objetivo',
    situations: (count) => write.count(count, { one: '# situación', other: '# situaciones' }),
    figures: 'Cifras',
  },
  figures: ({ low, high, centre, interval, within, holds, seconds: taken }) => [
    ...(low !== null && high !== null ? [{ what: 'Banda', is: `de ${writeSteps(low)} a ${writeSteps(high)}` }] : []),
    ...(centre !== null ? [{ what: 'Centro', is: write.signed(centre, 1) }] : []),
    ...(interval ? [{ what: `Centro, ${SURE}`, is: `de ${write.signed(interval.from, 1)} a ${write.signed(interval.to, 1)}` }] : []),
    ...(within !== null ? [{ what: 'Confianza, ±1\u00a0paso', is: write.chance(within) }] : []),
    ...(holds !== null ? [{ what: 'Pruebas', is: write.number(holds) }] : []),
    ...(taken !== null ? [{ what: 'Tiempo', is: write.duration(seconds(taken)) }] : []),
  ],
  retire: 'Retirar esta situación',
  bringBack: 'Volver a usar esta situación',
  history: {
    title: 'Historial',
    none: 'Aquí aún no se ha medido, introducido ni fotografiado nada.',
    chart: `Puntos: medido, ${INTERVALS}. Cuadrados: introducido en la cámara.`,
    chartWithDrift: `Puntos: medido, ${INTERVALS}. Sombreado: dónde puede estar la deriva, ${SURE}. Cuadrados: introducido en la cámara.`,
    drifted: driftTold,
    entered: ({ at }) => `introducido en la cámara, ${write.day(at)}`,
    measured: ({ by, at }) => `${CAME[by]}, ${write.day(at)}`,
    noValue: NO_VALUE,
    facts: ({ found, service, low, high, interval, within, holds, other }) =>
      line([
        found === 'carried over' && 'hallado por su ancho',
        service && 'necesita taller',
        other !== null && `o ${writeSteps(other)}`,
        low !== null && high !== null && `banda de ${writeSteps(low)} a ${writeSteps(high)}`,
        interval && `centro entre ${write.signed(interval.from, 1)} y ${write.signed(interval.to, 1)}, ${SURE}`,
        within !== null && `${write.chance(within)} de confianza, ±1\u00a0paso`,
        holds !== null && write.count(holds, HOLDS),
      ]),
    seeHolds: 'Ver todas las pruebas o añadir una nota',
    photographed: {
      ...shown,
      more: 'Ver sus recortes o borrarla',
      crops: (both) => (both ? `Al ${write.percent(1)}: vista en vivo y enfoque automático` : `Al ${write.percent(1)}`),
      noCrops: 'No hay recortes de ella en este navegador.',
      crop: { reference: 'Enfocada en la vista en vivo', shot: 'Enfoque automático' },
      eraseCrops: 'Borrar los recortes',
      erase: 'Borrarla del historial',
    },
  },
  repeated: {
    title: (count) => `${write.number(count)} barridos juntos`,
    centre: ({ value, from, to }) => `Centro ${write.signed(value, 1)}, entre ${write.signed(from, 1)} y ${write.signed(to, 1)}, con un ${SURE}.`,
    last: ({ apart, allowed, differ }) => [
      `Los dos últimos distan ${stepsOf(apart)}. El azar explica hasta ${stepsOf(allowed)}.`,
      differ ? 'Difieren en más que eso.' : 'Concuerdan.',
    ],
    differ: 'los barridos difieren',
    scatter: ({ q, freedom, i2, tau2 }) => [
      `Dispersión Q ${write.number(q, 1)}, con ${write.count(freedom, { one: '# grado', other: '# grados' })} de libertad.`,
      `El ${write.percent(i2)} de ella es más que azar.`,
      `Entre barridos: ${stepsOf(Math.sqrt(tau2))}.`,
    ],
  },
  byHand: {
    open: 'Introducir un valor a mano',
    form: 'A mano',
    known: 'Qué se conoce',
    is: { band: 'Los dos extremos de la banda', value: 'Solo el valor que tiene ahora la cámara' },
    one: 'Un extremo',
    other: 'Otro extremo',
    centre: (centre) => `El centro es ${write.signed(centre, 1)}.`,
    which: 'Dos valores están igual de cerca del centro. ¿Cuál ha elegido?',
    value: 'Valor ahora',
    save: 'Guardar el valor',
    saved: 'Guardado en el cuaderno.',
    choice: writeSteps,
  },
};

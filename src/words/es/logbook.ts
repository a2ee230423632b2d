// Spanish: the logbook's list.
import type { DueReason } from '../../logbook/due.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { LogbookWords } from '../logbookWords.ts';
import { focusFell } from './focusFell.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const DAYS_IN_A_MONTH = 30.44;

const RECORDS = { one: '# barrido', other: '# barridos' };

const since = (happened: string, note: string): string =>
  note === '' ? `${happened} después de la medición.` : `${happened} después de la medición: ${note.replace(/\.$/, '')}.`;

function due(reason: DueReason): string {
  switch (reason.why) {
    case 'age':
      return reason.days < 60
        ? `Medido por última vez hace ${write.count(reason.days, { one: '# día', other: '# días' })}.`
        : `Medido por última vez hace ${write.count(Math.floor(reason.days / DAYS_IN_A_MONTH), { one: '# mes', other: '# meses' })}.`;
    case 'firmware':
      return since('Firmware nuevo', reason.note);
    case 'service':
      return since('Pasó por el taller', reason.note);
    case 'temperature':
      return `Medido a ${write.unit(reason.before, 'celsius')}, y ahora hay ${write.unit(reason.now, 'celsius')}.`;
    case 're-check':
      return `En la última revisión, la luz no estuvo fija con ${writeSteps(reason.value)}, el valor introducido.`;
    case 'drift':
      return `Las dos últimas mediciones difieren en ${write.count(reason.apart, { one: '# paso', other: '# pasos' }, 1)}.`;
    case 'photographs':
      return `Las fotos mostraron una desviación: con ${writeSteps(reason.value)}, el enfoque quedó ${focusFell(reason.bias)}.`;
  }
}

export const words: LogbookWords = {
  title: 'Cuaderno',
  find: { label: 'Buscar un cuerpo, objetivo, distancia focal o distancia', short: 'Buscar objetivo', found: 'Encontrado', aloud: 'Oírlo' },
  found: (count) => write.count(count, { one: '# encontrado', other: '# encontrados' }),
  files: 'Copias y tablas',
  practised: (count) => `Barridos de práctica (${write.number(count)})`,
  filter: {
    open: (on) => (on ? 'Filtro: sí' : 'Filtro'),
    body: 'Cuerpo',
    everyBody: 'Todos',
    show: 'Mostrar',
    is: {
      all: 'En uso',
      'due again': 'Pendiente',
      'never measured': 'Sin medir',
      'not entered': 'Medido, sin introducir',
      retired: 'Retirado',
    },
    temperature: {
      label: 'Temperatura ahora, °C',
      hint: 'Lo medido a una temperatura muy distinta queda entonces pendiente de volver a medir.',
    },
  },
  nothing: {
    of: {
      all: 'No hay nada en uso en el cuaderno.',
      'due again': 'No hay nada pendiente.',
      'never measured': 'Todo está medido.',
      'not entered': 'Todo lo medido está introducido.',
      retired: 'No hay nada retirado.',
    },
    like: (typed) => `Nada del cuaderno coincide con «${typed}». Pruebe con menos letras.`,
  },
  backUp: (reminder) =>
    reminder.is === 'none yet'
      ? `Aún no hay copia de seguridad de ${write.count(reminder.unsaved, RECORDS)}. Haga una ahora.`
      : `La última copia de seguridad tiene ${write.count(reminder.days, { one: '# día', other: '# días' })} y ${write.count(reminder.unsaved, { one: 'le falta # barrido', other: 'le faltan # barridos' })}. Haga una nueva ahora.`,
  noValue: 'sin valor',
  more: (count) => `Mostrar más (hay ${write.number(count)})`,
  details: (subject) => line([place(subject), subject.body]),
  standing: ({ state, at, value, measured }) => {
    if (state === 'never measured' || at === null) return 'sin medir';
    if (measured?.service) return `necesita taller, medido ${write.day(measured.at)}`;
    if (value === null) return `sin valor, ${write.day(at)}`;
    switch (state) {
      case 'measured':
        return `medido ${write.day(at)}, aún sin introducir`;
      case 'entered':
        return `introducido ${write.day(at)}`;
      case 'differ':
        return `introducido ${write.day(at)}, pero se midió ${writeSteps(measured?.chosen ?? value)}`;
    }
  },
  due,
  dueAgain: (reason) => `Pendiente de volver a medir. ${due(reason)}`,
  result: (outcome) => {
    switch (outcome.found) {
      case 'band':
        return writeSteps(outcome.chosen);
      case 'carried over':
        return outcome.service ? (outcome.side === 'high' ? 'sobre el rango' : 'bajo el rango') : writeSteps(outcome.chosen);
      case 'past the limit':
        return 'pasa del límite';
      case 'beyond the scale':
        return outcome.side === 'above' ? 'sobre el rango' : 'bajo el rango';
      case 'nothing':
        return 'sin banda';
    }
  },
  day: write.day,
};

// Spanish: what a sweep under way shows.
import type { Care } from '../../sweep/care.ts';
import type { Plain, Word } from '../../sweep/inputs.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { SweepWords } from '../sweepWords.ts';
import { taught } from '../taught.ts';
import { drifted } from './drift.ts';
import { press } from './press.ts';
import { arrowsSaid, readBack, seen } from './verdict.ts';
import { write } from './write.ts';

const CARE: Readonly<Record<Care, string>> = { quick: 'rápido', standard: 'normal', thorough: 'minucioso' };

const HOLDS = { one: '# prueba', other: '# pruebas' };

const WANTED = { centre: 'centro aún por precisar', ends: 'faltan por ver los extremos' } as const;

/** The word to say for each. */
const TOLD: Readonly<Record<Plain, Word>> = {
  hold: 'holding',
  undo: 'undo',
  repeat: 'repeat',
  help: 'help',
  pause: 'pause',
  resume: 'resume',
  skip: 'skip',
  accept: 'accept',
  'go on': 'go on',
  unmoved: 'same',
  moved: 'shifted',
  finish: 'finish',
  entered: 'entered',
  next: 'next',
  back: 'back',
  'far view': 'far view',
};

const told: SweepWords['heard']['told'] = (input) => {
  if ('heard' in input && input.heard !== null) return input.heard;
  switch (input.told) {
    case 'verdict':
      return readBack(input.verdict);
    case 'arrows':
      return arrowsSaid(input.arrows) ?? 'sin flechas';
    case 'set':
      return `${taught('set')} ${writeSteps(input.value)}`;
    case 'press':
      return press.is[input.press];
    default:
      return taught(TOLD[input.told]);
  }
};

const became: SweepWords['heard']['became'] = (event, hold) => {
  switch (event.did) {
    case 'began':
      return `prueba con ${writeSteps(event.value)}`;
    case 'judged':
    case 'amended':
      return hold ? `${seen(hold.verdict)}, con ${writeSteps(hold.value)}` : 'anotado';
    case 'chose':
      return `poner ${writeSteps(event.value)}`;
    case 'skipped':
      return 'saltado';
    case 'undid':
      return 'deshecho';
    case 'paused':
      return 'en pausa';
    case 'resumed':
      return 'reanudado';
    case 'checked':
      return event.focus === 'unmoved' ? 'el enfoque está igual' : 'el enfoque se ha movido';
    case 'went on':
      return 'continúa';
    case 'finished':
      return 'terminado';
    case 'opened':
    case 'ran':
    case 'unanswered':
    case 'cut off':
    case 'heard':
      return 'anotado';
  }
};

export const words: SweepWords = {
  leave: 'Volver al inicio. El barrido espera.',
  leaveFarView: 'Salir de la vista en grande',
  setUp: 'Preparar el banco',
  face: {
    label: 'Ahora',
    hold: 'La prueba',
    value: { set: 'Valor que poner', enter: 'Valor que introducir' },
    caption: {
      dialling: 'Ponga',
      holding: 'Mantenga',
      judging: 'Fin del tiempo',
      paused: 'En pausa',
      checking: 'Revise el enfoque',
      turning: 'Gire el anillo',
      enter: 'Introduzca',
      'past the limit': 'Pasa del límite',
      'beyond the scale': 'Fuera de rango',
      nothing: 'Sin luz fija',
    },
    thenPress: 'y pulse a medias',
    thenWait: 'y espere la cuenta',
    already: 'ya está puesto',
    way: (clicks, direction, from) =>
      direction === 'up' ? `suba ${write.number(clicks)} desde ${writeSteps(from)}` : `baje ${write.number(clicks)} desde ${writeSteps(from)}`,
    left: (seconds) => ({ figure: write.number(seconds), unit: write.count(seconds, { one: 'segundo', other: 'segundos' }) }),
    steady: '¿Fija?',
    paused: 'el barrido espera',
    past: 'La banda se sale del rango.',
    lies: { above: 'La banda queda por encima del rango.', below: 'La banda queda por debajo del rango.' },
    centreAbout: (centre) => `El centro está hacia ${write.signed(centre, 1)}.`,
    toCheck: 'Acéptelo para ver qué comprobar.',
    news: { holding: 'En curso.', judging: 'Fin del tiempo. ¿Estuvo fija la luz?' },
  },
  sure: (within) => `${write.chance(within)} de confianza, ±1\u00a0paso`,
  notYetSure: (within) => `solo ${write.chance(within)} de confianza, ±1\u00a0paso`,
  offer: {
    enough: (care, look) =>
      look
        ? `Suficiente para un barrido ${CARE[care]}. ¿Sigue nítida la vista en vivo? Acepte o siga probando.`
        : `Suficiente para un barrido ${CARE[care]}. Acepte o siga probando.`,
    asItStands: 'Acepte o siga probando.',
    noMoreHolds: 'Más pruebas no ayudarán.',
    firstThis: 'Corrija esto antes. Más pruebas por sí solas no ayudarán.',
  },
  standing: {
    anywhere: 'centro aún desconocido',
    near: (value, within) => `centro cerca de ${writeSteps(value)}, ${write.chance(within)} de confianza, ±1\u00a0paso`,
    centre: (centre) => `centro ${write.signed(centre, 1)}`,
    holds: (made) => write.count(made, HOLDS),
    toCome: (made, all, wanted) =>
      line([`${write.number(made)} de ${write.count(all, { one: '# prueba', other: 'unas # pruebas' })}`, wanted && WANTED[wanted]]),
  },
  checkFocus: {
    title: 'Revise el enfoque',
    why: drifted,
    look: 'No toque el anillo. Mire la vista en vivo: ¿sigue nítida?',
    lookAside: 'No toque el anillo. Mire la vista en vivo: ¿está tan desenfocada como antes?',
  },
  turnFocus: {
    label: 'Gire el anillo',
    title: { first: 'Desvíe el enfoque', further: 'Un poco más', 'other way': 'Sentido contrario', back: 'Demasiado' },
    what: {
      first:
        'En la vista en vivo, gire un poco el anillo, lo justo para que la diana pierda la nitidez. Gírelo en cualquier sentido: las pruebas dirán cuál es el bueno.',
      further: 'Era el sentido bueno. En la vista en vivo, gire el anillo un poco más.',
      'other way':
        'La banda queda más lejos que antes. Gire el anillo hacia atrás, pase por el punto nítido y pare en cuanto se pierda la nitidez por el otro lado.',
      back: 'La banda se sale por el otro lado. Retroceda con el anillo más o menos la mitad hacia el punto nítido.',
    },
    leaveIt: 'Después no toque el anillo hasta que termine este barrido.',
    practice: 'Con un objetivo real giraría el anillo en la vista en vivo, lo justo para perder la nitidez. La cámara de práctica gira sola el suyo.',
  },
  setValue: {
    title: 'Poner otro valor',
    value: 'Valor',
    up: 'Un paso arriba',
    down: 'Un paso abajo',
    set: 'Poner',
    cancel: 'Cancelar',
    offTheScale: ({ min, max, step }) =>
      step === 1
        ? `Escriba un número entero entre ${writeSteps(min)} y ${writeSteps(max)}.`
        : `Escriba un valor en pasos de ${write.number(step)} entre ${writeSteps(min)} y ${writeSteps(max)}.`,
  },
  heard: { label: 'Se oyó', none: 'Aún sin respuesta', told, became },
  understood: { answers: 'Respuestas que valen ahora', arrows: 'Flechas de la última prueba', asides: 'También vale ahora' },
  press,
  space: 'Espacio',
  following: { label: 'Solo mirar', what: 'Otra ventana dirige este barrido. Aquí solo se puede mirar.', takeOver: 'Traerlo aquí' },
  strip: {
    label: 'Pruebas hechas',
    hold: ({ value, verdict }, counts) => `${writeSteps(value)} ${seen(verdict)}: ${counts === 'in' ? 'dentro' : 'fuera'}`,
  },
};

// Spanish: what to enter for a lens on a body.
import type { MemoryPlace } from '../../logbook/entering/advice.ts';
import type { Fit } from '../../logbook/entering/band.ts';
import type { ShownThere } from '../../logbook/entering/shown.ts';
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import type { EnteringWords } from '../enteringWords.ts';
import { correctionBetween, focusFell, marginOf } from './focusFell.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

const KEEPS = { one: 'El cuerpo guarda un solo valor por objetivo.', two: 'El cuerpo guarda un valor para cada extremo de un zoom.' } as const;

const WHY: Readonly<Record<MemoryPlace['uncounted'][number]['why'], string>> = {
  'never measured': 'sin medir',
  'only a value is known': 'solo se conoce un valor',
  'past the limit': 'la banda pasa del límite',
  'beyond the scale': 'la banda queda fuera del rango',
  'nothing held': 'sin banda',
};

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: 'Hallado en un barrido',
  'by hand': 'Introducido a mano',
  'from a table': 'De una tabla',
  'from another computer': 'De otro dispositivo',
};

const CHECK = 'Compruébelo allí con fotos.';

const long = (focalLength: number): string => write.millimetres(millimetres(focalLength));
const where = ({ band }: Fit): string => place(band);
const missed = (fit: Fit): string =>
  `${where(fit)} (${write.count(fit.past, { one: '# paso más allá del extremo', other: '# pasos más allá del extremo' }, 1)})`;

function lies(linear: Fit, logarithmic: Fit): readonly string[] {
  if (linear.inside && logarithmic.inside) return ['Los dos caen en su banda.'];
  if (!linear.inside && !logarithmic.inside) return ['Ninguno cae en su banda.', CHECK];
  return [linear.inside ? 'Solo el primero cae en su banda.' : 'Solo el segundo cae en su banda.', CHECK];
}

function bracketSaid({ subject, bracket }: ShownThere): readonly string[] {
  if (bracket === null) return [];
  const { centre, at } = bracket;
  const head = `${place(subject)}: el horquillado del ${write.day(at)} sitúa el centro en ${correctionBetween(centre)}.`;
  if (bracket.is === 'alone') return [head, ...(bracket.value === null ? ['Queda fuera del rango.'] : [])];
  const { band, difference } = bracket;
  if (bracket.is === 'agree')
    return [head, `Concuerda con el centro de la banda, ${write.signed(band, 1)}. Juntos dan ${correctionBetween(bracket.joint)}, que es lo que cuenta aquí.`];
  const apart = `${write.signed(difference.value, 1)} ± ${write.number(marginOf(difference), 1)} pasos`;
  return [
    head,
    `Difiere del centro de la banda, ${write.signed(band, 1)}, en ${apart}, así que solo cuenta la banda. Revise el montaje y mida otra vez los dos.`,
  ];
}

function checkSaid({ subject, check }: ShownThere): string {
  if (check === null) return '';
  const { correction, bias, found, at } = check;
  const which = `${place(subject)}: la comprobación del ${write.day(at)}`;
  return found === 'confirmed'
    ? `${which} confirmó ${writeSteps(correction)}.`
    : `${which} halló una desviación con ${writeSteps(correction)}: el enfoque queda ${focusFell(bias)}.`;
}

export const words: EnteringWords = {
  title: 'Qué introducir',
  gone: 'Este cuerpo u objetivo ya no está en el equipo.',
  about: ({ body, lens }) => [`${pair({ lens: lens.name, body: body.name })}.`, KEEPS[body.zoomStore]],
  bare: 'Objetivo solo',
  behind: (converter) => `Con ${converter}`,
  bands: 'Cómo queda en cada banda',
  toPrint: 'Para imprimir',
  entered: 'Marcar como introducido',
  enteredAt: (focalLength) => `Marcar como introducido a ${long(focalLength)}`,
  weigh: {
    legend: 'Cómo ponderarlas',
    by: {
      'worst share': { label: 'Todas por igual', note: 'La peor de ellas queda lo mejor posible.' },
      use: { label: 'Según el uso', note: 'Lo que más se usa cuenta más.' },
    },
    weightOf: (band, converter) => (converter ? `Uso de ${place(band)}, con convertidor` : `Uso de ${place(band)}`),
    noUse: 'Indique cuánto se usa, de 0 a 100. Hasta entonces cuenta como 1.',
  },
  unknown: 'Aquí aún no se conoce ninguna banda. Mídala o introduzca a mano los dos extremos.',
  missingEnd: (focalLength) =>
    `Este cuerpo guarda un valor para cada extremo de un zoom. Mida también a ${long(focalLength)}. Hasta entonces, este valor sirve para todo.`,
  enter: 'Introduzca',
  wide: (focalLength) => `Angular, ${long(focalLength)}:`,
  tele: (focalLength) => `Tele, ${long(focalLength)}:`,
  serves: (outside, all, weighed) => {
    if (outside === 0) return write.count(all, { one: 'Cae en la única banda medida.', other: 'Cae en las # bandas.' });
    return weighed
      ? `Con la ponderación dada, queda fuera de ${write.number(outside)} de ${write.number(all)} bandas.`
      : `Ningún valor cae en las ${write.number(all)} bandas. Este queda fuera de ${write.number(outside)}.`;
  },
  table: { at: 'Medido a', off: 'Desvío', share: 'De media banda' },
  at: place,
  off: ({ error }) => write.signed(error, 1),
  share: ({ share, inside, past }) => (inside ? `${write.percent(share)}, dentro` : `${write.percent(share)}, fuera por ${write.number(past, 1)}`),
  middle: ({ band, linear, logarithmic }) => [
    `A ${place(band)}, entre los extremos, el cuerpo usa ${write.signed(linear.value, 1)} si se guía por la distancia focal y ${write.signed(logarithmic.value, 1)} si se guía por su logaritmo.`,
    'Los fabricantes no publican cuál de los dos.',
    `Medido: ${write.signed(band.centre, 1)}.`,
    ...lies(linear, logarithmic),
  ],
  trade: {
    title: 'Para qué sirve cada valor',
    option: ({ value, fits }) => [
      `${writeSteps(value)} sirve para ${write.list(fits.filter(({ inside }) => inside).map(where))}.`,
      `No sirve para ${write.list(fits.filter(({ inside }) => !inside).map(missed))}.`,
    ],
  },
  shown: { title: 'Qué mostraron las fotos', bracket: bracketSaid, check: checkSaid },
  uncounted: (list) => `Sin contar: ${write.list(list.map((one) => `${place(one)} (${WHY[one.why]})`))}.`,
  converter: (fNumber) => [
    'El cuerpo lo guarda aparte del objetivo solo.',
    ...(fNumber === null ? [] : [`El objetivo pasa a ser f/${write.number(fNumber, 1)}.`]),
  ],
  chart: {
    one: {
      'focal length': ['Barras: las bandas, por distancia focal.', 'Línea: el valor.', 'Una barra hueca no llega a la línea.'],
      distance: ['Barras: las bandas, por distancia.', 'Línea: el valor.', 'Una barra hueca no llega a la línea.'],
    },
    two: [
      'Barras: las bandas, por distancia focal.',
      'Línea: lo que usa el cuerpo si se guía por la distancia focal.',
      'Línea de trazos: si se guía por su logaritmo.',
      'Una barra hueca no llega a la línea.',
    ],
    mark: { 'focal length': long, distance: (distance) => write.distance(millimetres(distance)) },
  },
  page: {
    title: ({ body, lens }) => pair({ lens: lens.name, body: body.name }),
    about: ({ body, lens }, printed) => [
      ...(body.serial === null ? [] : [`Cuerpo ${body.serial}.`]),
      ...(lens.serial === null ? [] : [`Objetivo ${lens.serial}.`]),
      `Impreso el ${write.day(printed)}.`,
      'Introdúzcalo como dice el manual de la cámara y compruébelo después con fotos.',
    ],
    restsOn: (weighed) => (weighed ? 'En qué se basa, ponderado por el uso' : 'En qué se basa'),
    evidence: ({ band, measured: { at, by, holds, interval, within } }, use) => [
      `${place(band)}: banda de ${writeSteps(band.low)} a ${writeSteps(band.high)}.`,
      by === 'sweep' && holds !== null ? `${write.count(holds, { one: '# prueba', other: '# pruebas' })}, ${write.day(at)}.` : `${CAME[by]}, ${write.day(at)}.`,
      ...(interval ? [`Centro entre ${write.signed(interval.from, 1)} y ${write.signed(interval.to, 1)}, con un ${write.percent(0.95)} de confianza.`] : []),
      ...(within === null ? [] : [`${write.chance(within)} de confianza, ±1\u00a0paso.`]),
      ...(use === null ? [] : [`Cuenta ${write.number(use, 1)}.`]),
    ],
    lensGone: 'Este objetivo ya no está en el equipo. Cierre esta página y vuelva a abrirla desde el cuaderno.',
    gone: 'Esto ya no está en el equipo. Cierre esta página y vuelva a abrirla desde el cuaderno.',
  },
};

// Spanish: photographs of the printed target.
import type { EdgeFault } from '../../photographs/edge.ts';
import type { FindFault } from '../../photographs/findFault.ts';
import { focusErrorOf, type StepSize } from '../../photographs/focusError.ts';
import type { FocusUntold, FocusReading } from '../../photographs/focusReading.ts';
import type { Motion, MotionWay } from '../../photographs/motion.ts';
import type { EdgeReading } from '../../photographs/reading.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import type { MarkName } from '../../optics/print/marks.ts';
import { line } from '../line.ts';
import type { PhotographsWords } from '../photographsWords.ts';
import { BY_STEP, lengthAtTarget, sideOfTarget } from './focusFell.ts';
import { write } from './write.ts';

const CROPS = { one: ' y # recorte pequeño', other: ' y # recortes pequeños' };

const MARK: Readonly<Record<MarkName, string>> = {
  'upper left': 'la superior izquierda',
  'upper right': 'la superior derecha',
  'lower left': 'la inferior izquierda',
  'lower right': 'la inferior derecha',
};

const EDGE_FAULT: Readonly<Record<EdgeFault['is'], string>> = {
  'edge outside': 'demasiado cerca del margen de la foto',
  'edge too short': 'demasiado corto',
  'edge not slanted': 'sin la inclinación con que se imprimió',
  'no edge': 'no se ve ningún borde',
  'edge not straight': 'no es recto',
  'edge clipped': 'demasiado claro o demasiado oscuro',
  'two edges': 'hay otra cosa al lado',
  'edge too blurred': 'demasiado desenfocado',
  'edge too sharp': 'más nítido de lo que distinguen los píxeles',
};

function notFound(fault: FindFault): string {
  switch (fault.is) {
    case 'no print':
      return 'No se ha encontrado ninguna diana. Tome una foto que muestre la diana entera.';
    case 'half a print':
      return `Solo se ha encontrado parte de la diana. ${write.count(fault.missing.length, { one: 'Falta esta marca', other: 'Faltan estas marcas' })}: ${write.list(fault.missing.map((name) => MARK[name]))}. Incluya la diana entera.`;
    case 'two prints':
      return 'Se han encontrado dos dianas. Deje una fuera de la foto.';
    case 'print too small':
      return 'La diana es demasiado pequeña en esta foto. Acérquese o imprima una mayor.';
    case 'print too tilted':
      return `La diana está inclinada ${write.degrees(fault.tilt, 0)}. Póngala paralela al sensor.`;
    case 'older print':
      return 'Esta diana es anterior a las que llevan marcas, así que no se puede medir. Imprima una nueva.';
    case 'marks unread':
      return 'No se pueden leer las marcas de la diana. Ilumínela por igual, despeje la vista, enfoque cerca de ella y desactive en la cámara el realce de nitidez.';
    case 'picture blown':
      return 'Esta foto está quemada. Exponga menos.';
    case 'picture black':
      return 'Esta foto está negra. Exponga más.';
  }
}

const moved = (way: MotionWay): string =>
  `Esta foto está más borrosa ${way === 'sideways' ? 'en horizontal que en vertical' : 'en vertical que en horizontal'}: la cámara se movió. Use un trípode y un disparador remoto o el autodisparador.`;

const noRamp = (why: FindFault): string =>
  why.is === 'half a print'
    ? 'Solo se ha encontrado parte de la rampa, así que no se sabe dónde quedó el enfoque. Incluya la rampa entera.'
    : 'No se ha encontrado ninguna rampa, así que no se sabe dónde quedó el enfoque. Ponga la rampa debajo de la diana e inclúyala entera.';

const LACKING = { focalLength: 'la distancia focal', aperture: 'la abertura', sensor: 'el tamaño del sensor' };

function noFocus(fault: FocusUntold): string {
  switch (fault.is) {
    case 'no target':
      return 'Sin la diana no se sabe dónde quedó el enfoque.';
    case 'no ramp':
      return noRamp(fault.why);
    case 'camera unknown':
      return `Para saber dónde quedó el enfoque hace falta conocer ${write.list(fault.lacking.map((each) => LACKING[each]))}. Complete el cuerpo y el objetivo en el equipo, y añada la foto tal como la guardó la cámara.`;
    case 'not the whole picture':
      return 'Esta foto no tiene la forma del sensor, así que está recortada o es una captura de pantalla. Añada la foto entera, tal como la tomó la cámara.';
    case 'cropped':
      return 'Esta foto se recortó después de tomarla, así que no se sabe dónde quedó el enfoque. Añada la foto tal como la tomó la cámara.';
    case 'too few pixels':
      return 'Esta foto es demasiado pequeña para mostrar dónde quedó el enfoque. Añada la foto tal como la tomó la cámara.';
    case 'ramp unread':
      switch (fault.why.is) {
        case 'ramp hidden':
          return 'Se puede leer muy poco de la rampa para saber dónde quedó el enfoque. Despeje la vista e ilumínela por igual.';
        case 'ramp blown out':
          return 'La rampa está quemada, así que no se sabe dónde quedó el enfoque. Exponga menos.';
        case 'focus off the ramp':
          return `El enfoque quedó más allá del extremo ${fault.why.lies === 'behind' ? 'lejano' : 'cercano'} de la rampa. Enfoque más cerca de la diana o imprima una rampa más larga.`;
        case 'ramp too flat':
          return 'Toda la rampa está casi igual de nítida, así que no se sabe dónde quedó el enfoque. Abra el diafragma o imprima una rampa más larga.';
        case 'camera moved':
          return moved(fault.why.blurs === 'upright' ? 'sideways' : 'up and down');
      }
  }
}

const reached = ({ low, high }: FocusReading['ramp']['interval']): string =>
  low < 0 && high > 0
    ? `entre ${lengthAtTarget(low)} delante y ${lengthAtTarget(high)} detrás`
    : `entre ${lengthAtTarget(Math.min(Math.abs(low), Math.abs(high)))} y ${lengthAtTarget(Math.max(Math.abs(low), Math.abs(high)))} ${low < 0 ? 'delante' : 'detrás'}`;

const HEADLINE: Readonly<Record<FocusReading['is'], string>> = {
  sharp: 'Nitidez suficiente.',
  'not sharp': 'Nitidez insuficiente.',
  'not sure': 'Demasiado justo para saber si la nitidez es suficiente.',
};

/** What is in focus is not sharp where the camera moved, which is told beside it. */
const focusSentences = ({ is, ramp }: FocusReading, motion: Motion = { is: 'alike' }): readonly string[] => [
  is === 'sharp' && motion.is === 'moved' ? 'Enfocada.' : HEADLINE[is],
  ramp.lies === 'on the target'
    ? 'Hasta donde se puede saber, el enfoque quedó en la diana.'
    : `El enfoque quedó ${lengthAtTarget(ramp.error)} ${sideOfTarget(ramp.error)}.`,
  `Con un ${write.percent(0.95)} de confianza: ${reached(ramp.interval)}.`,
];

function focusFigures(focus: FocusReading, measured: WithInterval | null): readonly string[] {
  const { ramp, depth, share } = focus;
  return [
    `Error de enfoque ${write.signed(ramp.error, 1)}\u00a0mm, ${write.percent(0.95)} entre ${write.signed(ramp.interval.low, 1)} y ${write.signed(ramp.interval.high, 1)}\u00a0mm; menos es delante.`,
    `Profundidad de campo: ${lengthAtTarget(depth.front)} delante, ${depth.behind === 'infinite' ? 'sin fin' : lengthAtTarget(depth.behind)} detrás. El error de enfoque es el ${write.percent(share)} de la profundidad de su lado.`,
    `Desenfoque donde es menor: ${write.number(ramp.leastBlur, 2)} píxeles. Crece a ${write.number(ramp.growth, 2)} veces el ritmo que se espera de este objetivo.`,
    ...undone(focus, measured),
  ];
}

/** How many steps undo a focus error that is told, by what a bracket measured a step to be worth, or else by an estimate. */
function undone({ ramp, depth, step }: FocusReading, measured: WithInterval | null): readonly string[] {
  if (ramp.lies === 'on the target') return [];
  const size: StepSize = measured === null ? { from: 'estimate', step } : { from: 'bracket', step: measured };
  const { toAdd } = focusErrorOf({ value: ramp.error, ...ramp.interval }, depth, size);
  return toAdd === null ? [] : [`Se compensaría con cerca de ${write.signed(toAdd.value, 1)} pasos de corrección, ${BY_STEP[size.from]}.`];
}

const AT: Readonly<Record<EdgeReading['edge']['at'], string>> = { middle: 'Centro', corner: 'Esquina' };
const RUNS: Readonly<Record<EdgeReading['edge']['runs'], string>> = { upright: 'vertical', level: 'horizontal' };
const edgeName = ({ edge }: EdgeReading): string => `${AT[edge.at]}, borde ${RUNS[edge.runs]}`;

export const words: PhotographsWords = {
  title: 'Comprobar con fotos',
  choose: 'Fotos',
  drop: 'Elíjalas, suéltelas aquí o péguelas.',
  stays: 'Se leen en este dispositivo, no se envían a ninguna parte y no se guardan.',
  practise: 'Probar con fotos de práctica',
  printed: {
    label: 'La escala impresa mide, mm',
    hint: 'Dibujada como 100. Si mide otra cosa, indíquelo antes de añadir fotos.',
    fault: 'Indique la longitud de la escala impresa en milímetros, de 50 a 200, por ejemplo 94.',
  },
  pictures: 'Fotos añadidas',
  more: (count) => `Mostrar más (hay ${write.number(count)})`,
  progress: (read, all) => `${write.number(read)} de ${write.count(all, { one: '# foto leída', other: '# fotos leídas' })}.`,
  stage: {
    waiting: 'En espera',
    opening: 'Abriendo el archivo',
    decoding: 'Descodificando la foto',
    measuring: 'Midiendo',
    'let go': 'Sin leer. Añádala otra vez para leerla.',
  },
  stop: 'Dejar de leer',
  clear: 'Quitar todas las fotos',
  fault: {
    'file unread': 'No se puede leer este archivo. Compruebe que siga en su sitio y añádalo otra vez.',
    'no picture': 'El navegador no encuentra ninguna imagen en este archivo. Añada un JPEG, PNG, WebP o AVIF, al tamaño en que lo tomó la cámara.',
    'no picture inside': 'El navegador no encuentra ninguna imagen en este archivo RAW. Añada un JPEG de la misma toma.',
    'only a small picture inside': 'Este archivo RAW solo contiene una vista previa pequeña. Añada un JPEG de la misma toma a tamaño completo.',
    'too large': 'Esta foto es demasiado grande para leerla aquí. Añada una de 110 megapíxeles como máximo.',
    'too small': 'Esta foto es demasiado pequeña para medirla. Añada la foto tal como la tomó la cámara.',
    stopped: 'Ha fallado la lectura de esta foto. Añádala otra vez o tome otra.',
  },
  found: (ramp) => (ramp ? 'La foto, con la diana y la rampa perfiladas.' : 'La foto, con la diana perfilada.'),
  target: ({ tilt, resized }) => {
    const stands =
      tilt < 3
        ? 'Se ha encontrado la diana, y está paralela al sensor.'
        : `Se ha encontrado la diana, pero está inclinada unos ${write.degrees(tilt, 0)}. Póngala paralela al sensor.`;
    return resized === null
      ? stands
      : `${stands} Este archivo se redimensionó al ${write.percent(resized)} de lo que tomó la cámara, y eso cambia la nitidez. Añada la foto tal como la tomó la cámara.`;
  },
  notFound,
  focus: focusSentences,
  noFocus,
  moved,
  sharpened: 'A esta foto se le realzó la nitidez, así que su MTF50 favorece al objetivo. Desactive el realce en la cámara.',
  unslanted: (roll) =>
    `La diana está girada ${write.degrees(Math.abs(roll), 0)} ${roll < 0 ? 'a la izquierda' : 'a la derecha'}, así que sus bordes coinciden con los píxeles y no se pueden medir. Póngala derecha.`,
  unstated:
    'A este archivo le faltan los datos de la cámara, así que un recorte pasaría inadvertido. Si está recortado, añada la foto tal como la tomó la cámara.',
  crops: `Bordes al ${write.percent(1)}`,
  crop: edgeName,
  chart: {
    title: 'Nitidez a lo largo de la rampa',
    said: (focus) => focusSentences(focus).join(' '),
    target: 'diana',
    depth: (depth) => write.unit(depth, 'millimeter'),
  },
  figures: {
    title: 'Cifras',
    edge: (reading) =>
      reading.measure.ok
        ? `${edgeName(reading)}: MTF50 ${write.number(reading.measure.value.mtf50, 3)} ciclos por píxel, ${write.percent(0.95)} entre ${write.number(reading.measure.value.interval.low, 3)} y ${write.number(reading.measure.value.interval.high, 3)}.`
        : `${edgeName(reading)}: ${EDGE_FAULT[reading.measure.fault.is]}.`,
    target: ({ scale, roll, tilt }) =>
      `${write.number(scale, 2)} píxeles por milímetro, girada ${write.degrees(Math.round(roll * 10) / 10, 1)} en su plano e inclinada ${write.degrees(tilt, 1)} respecto a la cámara.`,
    focus: focusFigures,
  },
  keep: {
    label: 'Guardar en el cuaderno',
    done: 'Guardado en el cuaderno',
    what: (crops) => `Guarda las cifras${crops === 0 ? '' : write.count(crops, CROPS)}, no las fotos.`,
    kept: 'Está en el historial de esta situación.',
    erase: 'Borrarlo',
    noSituation: 'Para guardarlo, abra el cuaderno, elija la situación y añada las fotos desde ella.',
    noValue: 'Para guardarlo, indique arriba el valor que comprobar.',
    another: 'Esta foto se tomó con otro cuerpo, otro objetivo u otra distancia focal que los de esta situación, así que no se puede guardar aquí.',
  },
  camera: ({ width, height }, camera) =>
    line([
      `${write.number(width)} × ${write.number(height)} píxeles`,
      camera !== null && camera.focalLength !== null && write.millimetres(camera.focalLength),
      camera !== null && camera.aperture !== null && `f/${write.number(camera.aperture, 1)}`,
      camera !== null && camera.distance !== null && write.distance(camera.distance),
      camera !== null && camera.taken !== null && write.dayAndTime(camera.taken),
    ]),
};

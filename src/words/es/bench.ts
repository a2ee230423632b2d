// Spanish: the bench.
import type { BenchWords } from '../benchWords.ts';
import { line } from '../line.ts';
import { benchFault } from './benchFaults.ts';
import { CHOICES, BENCH_FIELD, HINT } from './benchFields.ts';
import { bySides, focus, lightFound, stands, STEP_FROM, tilted } from './benchFindings.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';

/** "de 9,81 m a 10,2 m", or where both are one "a 10 m". */
const between = ([near = '', far]: readonly string[]): string => (far === undefined ? `a ${near}` : `de ${near} a ${far}`);

const mm = (length: number, digits: number): string => write.unit(length, 'millimeter', digits);

export const words: BenchWords = {
  title: 'El banco',
  focalLength: 'Distancia focal, mm',
  missing: {
    'no focal length': 'Indique la distancia focal en milímetros, por ejemplo 85.',
    untold: 'Indique antes la distancia focal de este barrido. Pulse «Focal», encima del valor.',
  },
  rig: ({ lens, body, focalLength }) => line([lens, body, write.millimetres(focalLength)]),
  fault: benchFault,
  field: BENCH_FIELD,
  hint: HINT,
  empty: (length) => `Si se deja vacío, ${write.number(length)}.`,
  measured: { m: 'Distancia medida, m', ft: 'Distancia medida, ft' },
  choices: CHOICES,
  sensor: ({ width, height }) => `${write.number(width, 2)} × ${write.number(height, 2)}\u00a0mm`,
  distance: {
    title: 'Distancia',
    figures: ({ usual, shortest, yours, unit }) => [
      { name: 'Uso general', value: `${write.distance(usual, unit)}, 50 focales` },
      { name: 'Sala pequeña', value: `desde ${write.distance(shortest, unit)}, 25 focales` },
      { name: 'La suya', value: write.distance(yours, unit) },
    ],
    stands,
    use: (length, unit) => `Usar ${write.distance(length, unit)} en el barrido`,
    useUsual: 'Usar 50 focales',
  },
  depth: {
    title: 'Objetivo y profundidad de campo',
    finer: 'Detalles: convertidor, píxeles, zona de AF, desenfoque, paso',
    wanted: 'Indique la abertura máxima para ver la profundidad de campo, la luz, la inclinación y la diana.',
    figures: ({ magnification, measured, total, front, behind, near, far, focus: atSensor, quarterWave, hyperfocal, blur, airy, unit }) => [
      { name: 'Ampliación', value: `1 : ${write.number(1 / magnification, 1)}`, note: measured ? 'medida' : 'lente delgada' },
      { name: 'Profundidad de campo', value: nearTarget(total, unit) },
      { name: 'delante', value: nearTarget(front, unit) },
      { name: 'detrás', value: nearTarget(behind, unit) },
      {
        name: 'Nítido',
        value: far === 'infinite' ? `de ${write.distance(near, unit)} a infinito` : between(write.distances(near, far, unit)),
        note: 'desde el plano focal',
      },
      { name: 'Profundidad de foco', value: mm(atSensor, 3), note: `un cuarto de onda de error son ${mm(quarterWave, 3)}` },
      { name: 'Hiperfocal', value: nearTarget(hyperfocal, unit) },
      { name: 'Desenfoque admitido', value: mm(blur, 3), note: `el disco de Airy es el ${write.percent(airy)} de este` },
    ],
    step: (step, share, unit, by) =>
      `Un paso mueve el enfoque unos ${nearTarget(step, unit)} en la diana, el ${write.percent(share)} de la profundidad que hay detrás. ${STEP_FROM[by]}`,
    worthMeasured: 'Según lo midió un horquillado con fotos.',
    converted: (aperture, lensSteps, bodySteps) =>
      `Con el convertidor, la abertura es f/${write.number(aperture, 1)}. Los pasos de un error del objetivo se multiplican por ${write.number(lensSteps, 2)}; ` +
      `los de uno del cuerpo, por ${write.number(bodySteps, 2)}. Por eso, mida aparte el objetivo con el convertidor.`,
  },
  target: {
    title: 'Diana',
    wanted: 'La diana se dibuja en cuanto indique la abertura máxima.',
    size: (bar, field, sheets) => `Barras de ${mm(bar, 2)} en un campo de ${mm(field, 0)}, en ${write.count(sheets, { one: 'una hoja', other: '# hojas' })}.`,
    open: 'Abrir la página para imprimir',
    print: ({ factor, trueSize }) =>
      trueSize
        ? 'La hoja impresa tiene el tamaño exacto.'
        : `La hoja ha salido al ${write.percent(factor, 1)}. Imprímala otra vez al ${write.percent(1)}, sin ajustar a la página. O consérvela, y las medidas se calcularán con el ${write.percent(factor, 1)}.`,
  },
  light: { title: 'Luz', finer: 'Lámparas y cuánta luz basta', verdict: lightFound },
  square: {
    title: 'Paralelismo',
    byEye: 'Aquí basta con poner a ojo la diana paralela al sensor.',
    allowed: (tilt, width, nearer) =>
      `La diana debe estar paralela al sensor, con un margen de ${write.degrees(tilt, 1)}. En sus ${write.millimetres(width)} de ancho, un borde puede estar ${mm(nearer, 1)} más cerca que el otro.`,
    miss: {
      mirror: (pixels) => `En el espejo, el objetivo puede verse a ${write.count(pixels, { one: '# píxel', other: '# píxeles' })} del centro.`,
      spot: (off) => `El punto de luz puede volver a ${write.millimetres(off)} de su origen.`,
    },
    tilted,
    bySides,
  },
  place: {
    title: 'Rampa y reparto de la profundidad',
    finer: 'Detalles: rampa con otra inclinación',
    onTarget: 'El enfoque está en la diana.',
    focus,
    wanted: 'El desvío se calcula en cuanto indique la abertura máxima.',
    share: (now) => `Con el enfoque en el motivo, el ${write.percent(now)} queda delante. El valor hallado en el barrido se desviará, y el resultado lo dirá.`,
  },
  walk: {
    title: 'Montaje guiado',
    what: 'Cada paso se dice y se muestra. Lo que marque y lea se guarda con el barrido.',
    kit: 'Qué tiene el equipo',
    traits: {
      bodyStabiliser: 'Estabilizador en el cuerpo',
      lensStabiliser: 'Estabilizador en el objetivo',
      liveView: 'Vista en vivo',
      rearButton: 'Enfoque con botón trasero',
      manualAtBody: 'Enfoque manual elegido en el cuerpo',
      zoom: 'Objetivo zoom',
      heavy: 'Objetivo con pie de trípode',
    },
    notYet: 'Para empezar, indique arriba la abertura máxima y corrija lo que está señalado.',
    begin: 'Empezar el montaje',
  },
};

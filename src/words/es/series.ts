// Spanish: pictures in a series.
import type { CheckSeries } from '../../photographs/series/checkSeries.ts';
import type { BracketTold } from '../../photographs/series/bracketSeries.ts';
import { focusErrorOf, type StepSize } from '../../photographs/focusError.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { isOnScale, nearestWithin, writeSteps, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { line } from '../line.ts';
import type { SeriesWords } from '../seriesWords.ts';
import { BY_STEP, correctionBetween, focusFell, lengthAtTarget, lengthWithin, marginOf, sideOfTarget } from './focusFell.ts';
import { within } from './subject.ts';
import { write } from './write.ts';

const SHOTS = { one: '# toma', other: '# tomas' };
const MORE_SHOTS = { one: 'haga # toma más', other: 'haga # tomas más' };

const inMillimetres = ({ low, high }: WithInterval): string => `${write.percent(0.95)} entre ${write.signed(low, 1)} y ${write.signed(high, 1)}\u00a0mm`;

function checkTold(series: CheckSeries, value: Steps | null, scale: Scale, step: WithInterval | null): readonly string[] {
  const { check } = series;
  const { verdict, bias } = check;
  const which = value === null ? 'el valor' : writeSteps(value);
  switch (verdict.is) {
    case 'confirmed':
      return [
        `Confirmado: ${which} es correcto.`,
        `El enfoque queda ${focusFell(bias)}, con seguridad dentro de la profundidad de campo.`,
        ...waysTold(series),
      ];
    case 'shifted':
      return [
        `Desviado: con ${value === null ? 'este valor' : which}, el enfoque queda ${focusFell(bias)}.`,
        ...undone(series, value, scale, step),
        ...waysTold(series),
      ];
    case 'not enough':
      return [
        `Aún no basta: ${write.count(verdict.more, MORE_SHOTS)}.`,
        ...(Number.isFinite(marginOf(bias)) ? [`Hasta ahora, el enfoque queda ${focusFell(bias)}.`] : []),
        ...waysTold(series),
      ];
  }
}

/** About how many steps undo the shift, by what a bracket measured a step to be worth, or else by an estimate. */
function undone({ check: { bias }, depth, step: estimate }: CheckSeries, value: Steps | null, scale: Scale, step: WithInterval | null): readonly string[] {
  const size: StepSize = step === null ? { from: 'estimate', step: estimate } : { from: 'bracket', step };
  const { toAdd } = focusErrorOf(bias, depth, size);
  const whole = toAdd === null ? 0 : Math.round(toAdd.value / scale.step) * scale.step;
  if (whole === 0) return [];
  const about = `Se compensaría con cerca de ${write.signed(whole)} ${Math.abs(whole) === 1 ? 'paso' : 'pasos'}, ${BY_STEP[size.from]}`;
  if (value === null) return [`${about}.`];
  return isOnScale(scale, value + whole) ? [`${about}: pruebe ${writeSteps(value + whole)} y compruebe otra vez.`] : [`${about}, pero queda fuera del rango.`];
}

/** Told where the way that focus was thrown off surely makes a difference. */
function waysTold({ check: { nearLessFar } }: CheckSeries): readonly string[] {
  if (nearLessFar === null || (nearLessFar.low <= 0 && nearLessFar.high >= 0)) return [];
  const farther = nearLessFar.value > 0 ? 'más lejos' : 'más cerca';
  return [`Influye de dónde viene el enfoque: tras desenfocar hacia cerca, queda ${lengthWithin(nearLessFar)} ${farther} que tras desenfocar hacia lejos.`];
}

function bracketTold({ measure, joined, band }: BracketTold, scale: Scale): readonly string[] {
  const { centre, step } = measure;
  const worth = `Un paso mueve el enfoque ${lengthWithin(step)} en la diana.`;
  const head = `Las fotos sitúan el centro en ${correctionBetween(centre)}.`;
  if (joined === null || band === null) return [head, ...toEnter(centre.value, scale), worth];
  const apart = `${write.signed(joined.difference.value, 1)} ± ${write.number(marginOf(joined.difference), 1)} pasos`;
  if (joined.is === 'differ')
    return [head, `Difiere del centro de la banda, ${write.signed(band.value, 1)}, en ${apart}. Revise el montaje y mida otra vez los dos.`, worth];
  return [
    head,
    `Concuerda con el centro de la banda, ${write.signed(band.value, 1)}; la diferencia es de ${apart}. Juntos dan ${correctionBetween(joined.joint)}.`,
    ...toEnter(joined.joint.value, scale),
    worth,
  ];
}

function toEnter(centre: number, scale: Scale): readonly string[] {
  const value = nearestWithin(scale, centre);
  return value === null ? ['Queda fuera del rango.'] : [`Valor que introducir: ${writeSteps(value)}.`];
}

const LIVE_VIEW = 'Enfoque en la vista en vivo con la máxima ampliación y tome una foto.';

export const words: SeriesWords = {
  use: {
    title: 'Para qué son las fotos',
    options: {
      one: { label: 'Foto a foto', note: '¿Está nítida y dónde quedó el enfoque?' },
      check: { label: 'Comprobar el valor introducido', note: 'Varias tomas con un valor: ¿es correcto?' },
      bracket: { label: 'Horquillado de correcciones', note: 'Tomas con varios valores: ¿dónde está el centro y cuánto vale un paso?' },
    },
  },
  setUp: {
    title: 'Preparar las fotos',
    steps: [
      'Ponga la cámara en un trípode. Use un disparador remoto o el autodisparador.',
      'Elija la abertura máxima y la sensibilidad base. Exponga de modo que el papel quede claro, pero no quemado.',
      'Desactive el realce de nitidez y la reducción de ruido, o póngalos en neutro.',
      'Guarde a tamaño completo y con la mejor calidad.',
      'Pase las fotos por cable o con un lector de tarjetas, sin mover la cámara.',
    ],
  },
  result: 'Qué muestran juntas las fotos',
  wait: 'El resultado llega cuando estén leídas todas las fotos.',
  out: {
    'another body': 'Tomada con otro cuerpo. Queda fuera de esta serie.',
    'another lens': 'Tomada con otro objetivo. Queda fuera de esta serie.',
    'another focal length': 'Tomada con otra distancia focal. Queda fuera de esta serie.',
    'another aperture': 'Tomada con otra abertura. Queda fuera de esta serie.',
    'the same shot': 'La misma toma ya está aquí. Cuenta una vez, así que esta foto queda fuera.',
    'another distance': 'Tomada desde otra distancia o recortada. Queda fuera de esta serie.',
  },
  shown: 'Qué muestra esta foto',
  each: {
    title: 'Cada foto',
    state: (count, out) =>
      line([write.count(count, { one: '# foto', other: '# fotos' }), out > 0 && write.count(out, { one: '# queda fuera', other: '# quedan fuera' })]),
  },
  value: {
    label: 'Valor que comprobar',
    hint: {
      one: 'El que tiene puesto el cuerpo.',
      check: 'El que tiene puesto el cuerpo.',
      bracket: 'Los valores del horquillado quedan a su alrededor.',
    },
    offTheScale: (scale) => `Indique una corrección ${within(scale)}.`,
  },
  beside: {
    title: `Bordes al ${write.percent(1)}: vista en vivo y esta foto`,
    reference: (upright) => `Vista en vivo, borde ${upright ? 'vertical' : 'horizontal'}`,
    shot: (upright) => `Esta foto, borde ${upright ? 'vertical' : 'horizontal'}`,
  },
  noReference: 'Ninguna foto se enfocó en la vista en vivo, así que una rampa no del todo bien puesta parecería una desviación. Tome una.',
  figures: 'Cifras de la serie',
  check: {
    order: {
      title: 'Orden de las tomas',
      steps: [
        LIVE_VIEW,
        'Lleve el enfoque muy hacia cerca, enfoque por el visor con el enfoque automático y tome una foto.',
        'Lleve el enfoque muy hacia lejos, enfoque con el enfoque automático y tome una foto.',
        'Siga con cerca y lejos por turnos, hasta tener seis con enfoque automático.',
      ],
    },
    part: { title: 'Enfocada', options: { 'live view': 'Vista en vivo', near: 'Desde cerca', far: 'Desde lejos', 'left out': 'Excluir' } },
    none: 'Aún no se puede usar ninguna foto con enfoque automático.',
    told: checkTold,
    figures: ({ check, shots, reference, depth }) => [
      `${write.count(shots, SHOTS)} con enfoque automático. Media ${write.signed(check.bias.value, 1)}\u00a0mm${Number.isFinite(check.bias.high) ? `, ${inMillimetres(check.bias)}` : ''}; menos es delante.`,
      `Repetibilidad: ${lengthAtTarget(check.repeatability)}, como desviación típica.`,
      ...(check.nearLessFar === null ? [] : [`Cerca menos lejos: ${write.signed(check.nearLessFar.value, 1)}\u00a0mm, ${inMillimetres(check.nearLessFar)}.`]),
      ...(reference === null ? [] : [`Vista en vivo: ${write.signed(reference.value, 1)}\u00a0mm, ${inMillimetres(reference)}. Se resta de la media.`]),
      `Profundidad de campo: ${lengthAtTarget(depth.front)} delante, ${depth.behind === 'infinite' ? 'sin fin' : lengthAtTarget(depth.behind)} detrás. Se confirma lo que con seguridad no usa más de la mitad.`,
    ],
  },
  bracket: {
    order: {
      title: 'Orden de las tomas',
      reference: LIVE_VIEW,
      shots: 'Después tome una foto con enfoque automático con cada uno de estos valores, en este orden. Desenfoque antes de cada una.',
      list: 'Valores en orden',
    },
    part: {
      title: 'Tomada con',
      option: (part) => (part === 'live view' ? 'Vista en vivo' : part === 'left out' ? 'Excluir' : writeSteps(part)),
    },
    none: 'Aún no se puede usar ninguna foto tomada con un valor.',
    fault: {
      'too few shots': 'Hay muy pocas tomas para saberlo: haga al menos cuatro, con dos valores o más.',
      'no slope': 'Los valores movieron el enfoque menos que la dispersión entre tomas, así que no se conoce el centro. Use valores más separados o más tomas.',
      'runs backwards': 'El enfoque se acercaba al crecer el valor, así que no se conoce el centro. Revise qué foto se tomó con qué valor.',
    },
    told: bracketTold,
    apart: (names) =>
      names.length === 1 ? `${write.list(names)} queda lejos de la línea y apenas cuenta.` : `${write.list(names)} quedan lejos de la línea y apenas cuentan.`,
    figures: ({ shots, reference }, { measure: { step, scatter, atZero } }) => [
      `${write.count(shots.length, SHOTS)} con enfoque automático.`,
      `Un paso: ${write.number(step.value, 2)}\u00a0mm, ${write.percent(0.95)} entre ${write.number(step.low, 2)} y ${write.number(step.high, 2)}\u00a0mm.`,
      `Con el valor 0, el enfoque queda ${lengthAtTarget(atZero)} ${sideOfTarget(atZero)}. Una toma se aparta ${lengthAtTarget(scatter)} de la línea, como desviación típica.`,
      ...(reference === null
        ? []
        : [`Vista en vivo: ${write.signed(reference.value, 1)}\u00a0mm, ${inMillimetres(reference)}. El centro está donde la línea la corta.`]),
    ],
    chart: {
      title: 'Dónde quedó el enfoque con cada valor',
      said: ({ measure: { centre, step } }) =>
        `La línea sube ${write.number(step.value, 1)}\u00a0mm por paso y corta la diana en ${write.signed(centre.value, 1)}.`,
      behind: 'detrás',
      inFront: 'delante',
    },
  },
};

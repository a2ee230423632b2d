// English: pictures in a series.
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

const SHOTS = { one: '# shot', other: '# shots' };
const MORE_SHOTS = { one: '# more shot', other: '# more shots' };

const inMillimetres = ({ low, high }: WithInterval): string => `95% between ${write.signed(low, 1)} and ${write.signed(high, 1)}\u00a0mm`;

function checkTold(series: CheckSeries, value: Steps | null, scale: Scale, step: WithInterval | null): readonly string[] {
  const { check } = series;
  const { verdict, bias } = check;
  const which = value === null ? 'the value' : writeSteps(value);
  switch (verdict.is) {
    case 'confirmed':
      return [
        `Confirmed: ${value === null ? 'the value is right' : `${which} is right`}.`,
        `Focus falls ${focusFell(bias)}, well within the depth of field.`,
        ...waysTold(series),
      ];
    case 'shifted':
      return [`Shifted: with ${which}, focus falls ${focusFell(bias)}.`, ...undone(series, value, scale, step), ...waysTold(series)];
    case 'not enough':
      return [
        `Not enough to tell: take ${write.count(verdict.more, MORE_SHOTS)}.`,
        ...(Number.isFinite(marginOf(bias)) ? [`So far, focus falls ${focusFell(bias)}.`] : []),
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
  const about = `About ${write.signed(whole)} ${Math.abs(whole) === 1 ? 'step' : 'steps'} would undo it, ${BY_STEP[size.from]}`;
  if (value === null) return [`${about}.`];
  return isOnScale(scale, value + whole) ? [`${about}: try ${writeSteps(value + whole)}, and check again.`] : [`${about}, which is off the scale.`];
}

/** Told where the way that focus was thrown off surely makes a difference. */
function waysTold({ check: { nearLessFar } }: CheckSeries): readonly string[] {
  if (nearLessFar === null || (nearLessFar.low <= 0 && nearLessFar.high >= 0)) return [];
  const farther = nearLessFar.value > 0 ? 'farther away' : 'nearer';
  return [`It matters where focus comes from: after defocusing to near, it falls ${lengthWithin(nearLessFar)} ${farther} than after defocusing to far.`];
}

function bracketTold({ measure, joined, band }: BracketTold, scale: Scale): readonly string[] {
  const { centre, step } = measure;
  const worth = `One step moves focus by ${lengthWithin(step)} at the target.`;
  const head = `The pictures put the centre at ${correctionBetween(centre)}.`;
  if (joined === null || band === null) return [head, ...toEnter(centre.value, scale), worth];
  const apart = `${write.signed(joined.difference.value, 1)} ± ${write.number(marginOf(joined.difference), 1)} steps`;
  if (joined.is === 'differ')
    return [head, `This differs from the band’s centre, ${write.signed(band.value, 1)}, by ${apart}. Check the set-up, then measure both again.`, worth];
  return [
    head,
    `It agrees with the band’s centre, ${write.signed(band.value, 1)}; they differ by ${apart}. Together they give ${correctionBetween(joined.joint)}.`,
    ...toEnter(joined.joint.value, scale),
    worth,
  ];
}

function toEnter(centre: number, scale: Scale): readonly string[] {
  const value = nearestWithin(scale, centre);
  return value === null ? ['It lies off the scale.'] : [`Value to enter: ${writeSteps(value)}.`];
}

const LIVE_VIEW = 'Focus in live view at full magnification, and take one picture.';

export const words: SeriesWords = {
  use: {
    title: 'What the pictures are for',
    options: {
      one: { label: 'One picture at a time', note: 'Is it sharp, and where did focus fall?' },
      check: { label: 'Check the value entered', note: 'Several shots at one value: is it right?' },
      bracket: { label: 'A bracket of corrections', note: 'Shots at several values: where is the centre, and what is a step worth?' },
    },
  },
  setUp: {
    title: 'Set up for pictures',
    steps: [
      'Put the camera on a tripod. Use a remote release or the self-timer.',
      'Set full aperture and base sensitivity. Expose so that the paper is bright, but not blown out.',
      'Turn sharpening and noise reduction off, or to neutral.',
      'Save at full size and best quality.',
      'Transfer the pictures by cable or with a card reader, without moving the camera.',
    ],
  },
  result: 'What the pictures show together',
  wait: 'The result comes when all pictures are read.',
  out: {
    'another body': 'Taken with another body. It stays out of this series.',
    'another lens': 'Taken with another lens. It stays out of this series.',
    'another focal length': 'Taken at another focal length. It stays out of this series.',
    'another aperture': 'Taken at another aperture. It stays out of this series.',
    'the same shot': 'The same shot is here already. It counts once, so this picture stays out.',
    'another distance': 'Taken from another distance, or cropped. It stays out of this series.',
  },
  shown: 'What this picture shows',
  each: {
    title: 'Each picture',
    state: (count, out) =>
      line([write.count(count, { one: '# picture', other: '# pictures' }), out > 0 && write.count(out, { one: '# stays out', other: '# stay out' })]),
  },
  value: {
    label: 'Value to check',
    hint: { one: 'The one that the body is set to.', check: 'The one that the body is set to.', bracket: 'The values of the bracket lie around it.' },
    offTheScale: (scale) => `Enter a correction ${within(scale)}.`,
  },
  beside: {
    title: 'Edges at 100%: live view, then this picture',
    reference: (upright) => `Live view, ${upright ? 'upright' : 'level'} edge`,
    shot: (upright) => `This picture, ${upright ? 'upright' : 'level'} edge`,
  },
  noReference: 'No picture was focused in live view, so a ramp that does not stand quite true would look like a shift. Take one.',
  figures: 'Figures of the series',
  check: {
    order: {
      title: 'The order of the shots',
      steps: [
        LIVE_VIEW,
        'Turn focus far to the near side, focus with autofocus through the viewfinder, and take one picture.',
        'Turn focus far to the far side, focus with autofocus, and take one picture.',
        'Go on near and far by turns, until there are six with autofocus.',
      ],
    },
    part: { title: 'Focused', options: { 'live view': 'In live view', near: 'From near', far: 'From far', 'left out': 'Leave out' } },
    none: 'No picture taken with autofocus can be used yet.',
    told: checkTold,
    figures: ({ check, shots, reference, depth }) => [
      `${write.count(shots, SHOTS)} with autofocus. Mean ${write.signed(check.bias.value, 1)}\u00a0mm${Number.isFinite(check.bias.high) ? `, ${inMillimetres(check.bias)}` : ''}; minus is in front.`,
      `Repeatability: ${lengthAtTarget(check.repeatability)}, as a standard deviation.`,
      ...(check.nearLessFar === null ? [] : [`Near less far: ${write.signed(check.nearLessFar.value, 1)}\u00a0mm, ${inMillimetres(check.nearLessFar)}.`]),
      ...(reference === null ? [] : [`Live view: ${write.signed(reference.value, 1)}\u00a0mm, ${inMillimetres(reference)}. It is taken off the mean.`]),
      `Depth of field: ${lengthAtTarget(depth.front)} in front, ${depth.behind === 'infinite' ? 'without end' : lengthAtTarget(depth.behind)} behind. Confirmed is what surely uses no more than half of it.`,
    ],
  },
  bracket: {
    order: {
      title: 'The order of the shots',
      reference: LIVE_VIEW,
      shots: 'Then take one picture with autofocus at each of these values, in this order. Defocus before each.',
      list: 'Values in order',
    },
    part: {
      title: 'Taken at',
      option: (part) => (part === 'live view' ? 'Live view' : part === 'left out' ? 'Leave out' : writeSteps(part)),
    },
    none: 'No picture taken at a value can be used yet.',
    fault: {
      'too few shots': 'There are too few shots to tell: take four at least, at two values or more.',
      'no slope': 'The values moved focus less than the shots scatter, so the centre is not known. Take values farther apart, or more shots.',
      'runs backwards': 'Focus came nearer as the value grew, so the centre is not known. Check which picture was taken at which value.',
    },
    told: bracketTold,
    apart: (names) => `${write.list(names)} ${names.length === 1 ? 'lies' : 'lie'} far from the line, and hardly ${names.length === 1 ? 'counts' : 'count'}.`,
    figures: ({ shots, reference }, { measure: { step, scatter, atZero } }) => [
      `${write.count(shots.length, SHOTS)} with autofocus.`,
      `One step: ${write.number(step.value, 2)}\u00a0mm, 95% between ${write.number(step.low, 2)} and ${write.number(step.high, 2)}\u00a0mm.`,
      `At a value of 0, focus falls ${lengthAtTarget(atZero)} ${sideOfTarget(atZero)}. One shot scatters by ${lengthAtTarget(scatter)} about the line, as a standard deviation.`,
      ...(reference === null
        ? []
        : [`Live view: ${write.signed(reference.value, 1)}\u00a0mm, ${inMillimetres(reference)}. The centre is where the line meets it.`]),
    ],
    chart: {
      title: 'Where focus fell at each value',
      said: ({ measure: { centre, step } }) =>
        `The line rises by ${write.number(step.value, 1)}\u00a0mm a step, and meets the target at ${write.signed(centre.value, 1)}.`,
      behind: 'behind',
      inFront: 'in front',
    },
  },
};

// English: the bench.
import type { BenchWords } from '../benchWords.ts';
import { line } from '../line.ts';
import { benchFault } from './benchFaults.ts';
import { CHOICES, BENCH_FIELD, HINT } from './benchFields.ts';
import { bySides, focus, lightFound, stands, STEP_FROM, tilted } from './benchFindings.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';

const mm = (length: number, digits: number): string => write.unit(length, 'millimeter', digits);

export const words: BenchWords = {
  title: 'The bench',
  focalLength: 'Focal length, mm',
  missing: {
    'no focal length': 'Enter the focal length in millimetres, such as 85.',
    untold: 'Enter the focal length of this sweep first. Press “Focal length” above its value.',
  },
  rig: ({ lens, body, focalLength }) => line([lens, body, write.millimetres(focalLength)]),
  fault: benchFault,
  field: BENCH_FIELD,
  hint: HINT,
  empty: (length) => `If empty, ${write.number(length)}.`,
  measured: { m: 'Distance as measured, m', ft: 'Distance as measured, ft' },
  choices: CHOICES,
  sensor: ({ width, height }) => `${write.number(width, 2)} × ${write.number(height, 2)}\u00a0mm`,
  distance: {
    title: 'Distance',
    figures: ({ usual, shortest, yours, unit }) => [
      { name: 'General use', value: `${write.distance(usual, unit)}, 50 focal lengths` },
      { name: 'Short room', value: `from ${write.distance(shortest, unit)}, 25 focal lengths` },
      { name: 'Yours', value: write.distance(yours, unit) },
    ],
    stands,
    use: (length, unit) => `Use ${write.distance(length, unit)} for the sweep`,
    useUsual: 'Use 50 focal lengths',
  },
  depth: {
    title: 'Lens and depth of field',
    finer: 'Details: converter, pixels, AF area, blur, step',
    wanted: 'Enter the widest aperture to see depth of field, light, tilt and target.',
    figures: ({ magnification, measured, total, front, behind, near, far, focus: atSensor, quarterWave, hyperfocal, blur, airy, unit }) => [
      { name: 'Magnification', value: `1 : ${write.number(1 / magnification, 1)}`, note: measured ? 'measured' : 'thin lens' },
      { name: 'Depth of field', value: nearTarget(total, unit) },
      { name: 'in front', value: nearTarget(front, unit) },
      { name: 'behind', value: nearTarget(behind, unit) },
      {
        name: 'Sharp',
        value: far === 'infinite' ? `${write.distance(near, unit)} to infinity` : write.distances(near, far, unit).join(' to '),
        note: 'from the film plane',
      },
      { name: 'Depth of focus', value: mm(atSensor, 3), note: `a quarter wave of error is ${mm(quarterWave, 3)}` },
      { name: 'Hyperfocal', value: nearTarget(hyperfocal, unit) },
      { name: 'Blur allowed', value: mm(blur, 3), note: `the Airy disc is ${write.percent(airy)} of it` },
    ],
    step: (step, share, unit, by) =>
      `One step moves the focus about ${nearTarget(step, unit)} at the target, ${write.percent(share)} of the depth behind it. ${STEP_FROM[by]}`,
    worthMeasured: 'As a bracket with photographs measured it.',
    converted: (aperture, lensSteps, bodySteps) =>
      `With the converter the aperture is f/${write.number(aperture, 1)}. An error of the lens counts ${write.number(lensSteps, 2)} times as many steps, ` +
      `one of the body ${write.number(bodySteps, 2)} times. So measure the lens with the converter separately.`,
  },
  target: {
    title: 'Target',
    wanted: 'The target is drawn as soon as you enter the widest aperture.',
    size: (bar, field, sheets) => `Bars of ${mm(bar, 2)} in a field of ${mm(field, 0)}, on ${write.count(sheets, { one: 'one sheet', other: '# sheets' })}.`,
    open: 'Open the page to print',
    print: ({ factor, trueSize }) =>
      trueSize
        ? 'The print is true to size.'
        : `The print came out at ${write.percent(factor, 1)}. Print it again at 100%, not fitted to the page. Or keep it, and the sizes are worked out with ${write.percent(factor, 1)}.`,
  },
  light: { title: 'Light', finer: 'Lamps, and what is enough', verdict: lightFound },
  square: {
    title: 'Squareness',
    byEye: 'Here it is enough to set the target square by eye.',
    allowed: (tilt, width, nearer) =>
      `The target must be square to within ${write.degrees(tilt, 1)}. Across its ${write.millimetres(width)}, one edge may stand ${write.unit(nearer, 'millimeter', nearer < 10 ? 1 : 0)} nearer than the other.`,
    miss: {
      mirror: (pixels) => `In the mirror, the lens may see itself ${write.count(pixels, { one: '# pixel', other: '# pixels' })} off the middle.`,
      spot: (off) => `A returning spot may miss its source by ${write.millimetres(off)}.`,
    },
    tilted,
    bySides,
  },
  place: {
    title: 'Ramp, and depth on purpose',
    finer: 'Details: a ramp that leans by another angle',
    onTarget: 'Focus lies on the target.',
    focus,
    wanted: 'The shift is worked out as soon as you enter the widest aperture.',
    share: (now) => `With focus on the subject, ${write.percent(now)} lies in front. The value found by the sweep will be shifted, and the result says so.`,
  },
  walk: {
    title: 'Set-up walk',
    what: 'One step at a time, spoken and shown. What you tick and read is kept with the sweep.',
    kit: 'What the kit has',
    traits: {
      bodyStabiliser: 'Stabiliser in the body',
      lensStabiliser: 'Stabiliser in the lens',
      liveView: 'Live view',
      rearButton: 'Focus by a rear button',
      manualAtBody: 'Manual focus set at the body',
      zoom: 'Zoom lens',
      heavy: 'Lens with its own tripod foot',
    },
    notYet: 'To begin, enter the widest aperture above and correct what is marked.',
    begin: 'Walk through the set-up',
  },
};

// English: photographs of the printed target.
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

const CROPS = { one: ' and # small crop', other: ' and # small crops' };
const PICTURES = { one: '# picture', other: '# pictures' };

const MARK: Readonly<Record<MarkName, string>> = {
  'upper left': 'upper left',
  'upper right': 'upper right',
  'lower left': 'lower left',
  'lower right': 'lower right',
};

const EDGE_FAULT: Readonly<Record<EdgeFault['is'], string>> = {
  'edge outside': 'too near to the border of the picture',
  'edge too short': 'too short',
  'edge not slanted': 'not slanted as it was printed',
  'no edge': 'no edge was seen',
  'edge not straight': 'not straight',
  'edge clipped': 'too bright or too dark',
  'two edges': 'something else stands beside it',
  'edge too blurred': 'too blurred',
  'edge too sharp': 'sharper than the pixels can tell',
};

function notFound(fault: FindFault): string {
  switch (fault.is) {
    case 'no print':
      return 'No target was found. Take a picture that shows the whole target.';
    case 'half a print':
      return `Only part of the target was found: its ${write.list(fault.missing.map((name) => MARK[name]))} mark is missing. Include the whole target.`;
    case 'two prints':
      return 'Two targets were found. Keep one of them out of the picture.';
    case 'print too small':
      return 'The target is too small in this picture. Go nearer, or print a larger one.';
    case 'print too tilted':
      return `The target is turned away by ${write.degrees(fault.tilt, 0)}. Stand it square to the camera.`;
    case 'older print':
      return 'This target is from before targets had marks to be found by, so it cannot be measured. Print a new one.';
    case 'marks unread':
      return 'The marks on the target cannot be read. Light it evenly, clear the view to it, focus near it, and turn sharpening off in the camera.';
    case 'picture blown':
      return 'This picture is blown out. Expose less.';
    case 'picture black':
      return 'This picture is black. Expose more.';
  }
}

const moved = (way: MotionWay): string =>
  `This picture is blurred more ${way === 'sideways' ? 'sideways than up and down' : 'up and down than sideways'}: the camera moved. Use a tripod, and a remote release or the self-timer.`;

const noRamp = (why: FindFault): string =>
  why.is === 'half a print'
    ? 'Only part of the ramp was found, so where focus fell is not known. Include the whole ramp.'
    : 'No ramp was found, so where focus fell is not known. Put the ramp below the target, and include all of it.';

const LACKING = { focalLength: 'the focal length', aperture: 'the aperture', sensor: 'the size of the sensor' };

function noFocus(fault: FocusUntold): string {
  switch (fault.is) {
    case 'no target':
      return 'Without the target, where focus fell is not known.';
    case 'no ramp':
      return noRamp(fault.why);
    case 'camera unknown':
      return `To tell where focus fell, ${write.list(fault.lacking.map((each) => LACKING[each]))} must be known. Complete the body and lens in the kit, and bring in the picture as the camera wrote it.`;
    case 'not the whole picture':
      return 'This picture does not have the shape of the sensor, so it was cropped or is a screenshot. Bring in the whole picture as the camera took it.';
    case 'cropped':
      return 'This picture was cropped after it was taken, so where focus fell is not known. Bring in the picture as the camera took it.';
    case 'too few pixels':
      return 'This picture is too small to show where focus fell. Bring in the picture as the camera took it.';
    case 'ramp unread':
      switch (fault.why.is) {
        case 'ramp hidden':
          return 'Too little of the ramp can be read to know where focus fell. Clear the view to it, and light it evenly.';
        case 'ramp blown out':
          return 'The ramp is blown out, so where focus fell is not known. Expose less.';
        case 'focus off the ramp':
          return `Focus fell beyond the ${fault.why.lies === 'behind' ? 'far' : 'near'} end of the ramp. Focus closer to the target, or print a longer ramp.`;
        case 'ramp too flat':
          return 'All of the ramp is about equally sharp, so where focus fell is not known. Open the aperture, or print a longer ramp.';
        case 'camera moved':
          return moved(fault.why.blurs === 'upright' ? 'sideways' : 'up and down');
      }
  }
}

const reached = ({ low, high }: FocusReading['ramp']['interval']): string =>
  low < 0 && high > 0
    ? `${lengthAtTarget(low)} in front and ${lengthAtTarget(high)} behind`
    : `${lengthAtTarget(Math.min(Math.abs(low), Math.abs(high)))} and ${lengthAtTarget(Math.max(Math.abs(low), Math.abs(high)))} ${low < 0 ? 'in front' : 'behind'}`;

const HEADLINE: Readonly<Record<FocusReading['is'], string>> = {
  sharp: 'Sharp enough.',
  'not sharp': 'Not sharp enough.',
  'not sure': 'Too close to tell whether this is sharp enough.',
};

/** What is in focus is not sharp where the camera moved, which is told beside it. */
const focusSentences = ({ is, ramp }: FocusReading, motion: Motion = { is: 'alike' }): readonly string[] => [
  is === 'sharp' && motion.is === 'moved' ? 'In focus.' : HEADLINE[is],
  ramp.lies === 'on the target' ? 'Focus fell on the target, as far as can be told.' : `Focus fell ${lengthAtTarget(ramp.error)} ${sideOfTarget(ramp.error)}.`,
  `95% sure: between ${reached(ramp.interval)}.`,
];

function focusFigures(focus: FocusReading, measured: WithInterval | null): readonly string[] {
  const { ramp, depth, share } = focus;
  return [
    `Focus error ${write.signed(ramp.error, 1)}\u00a0mm, 95% between ${write.signed(ramp.interval.low, 1)} and ${write.signed(ramp.interval.high, 1)}\u00a0mm; minus is in front.`,
    `Depth of field: ${lengthAtTarget(depth.front)} in front, ${depth.behind === 'infinite' ? 'without end' : lengthAtTarget(depth.behind)} behind. The focus error is ${write.percent(share)} of the depth on its side.`,
    `Blur where it is least: ${write.number(ramp.leastBlur, 2)} pixels. It grows ${write.number(ramp.growth, 2)} times as fast as expected of this lens.`,
    ...undone(focus, measured),
  ];
}

/** How many steps undo a focus error that is told, by what a bracket measured a step to be worth, or else by an estimate. */
function undone({ ramp, depth, step }: FocusReading, measured: WithInterval | null): readonly string[] {
  if (ramp.lies === 'on the target') return [];
  const size: StepSize = measured === null ? { from: 'estimate', step } : { from: 'bracket', step: measured };
  const { toAdd } = focusErrorOf({ value: ramp.error, ...ramp.interval }, depth, size);
  return toAdd === null ? [] : [`About ${write.signed(toAdd.value, 1)} steps of correction would undo it, ${BY_STEP[size.from]}.`];
}

const AT: Readonly<Record<EdgeReading['edge']['at'], string>> = { middle: 'Middle', corner: 'Corner' };
const RUNS: Readonly<Record<EdgeReading['edge']['runs'], string>> = { upright: 'upright edge', level: 'level edge' };
const edgeName = ({ edge }: EdgeReading): string => `${AT[edge.at]}, ${RUNS[edge.runs]}`;

export const words: PhotographsWords = {
  title: 'Check with photographs',
  choose: 'Pictures',
  drop: 'Choose them, drop them here, or paste them.',
  stays: 'They are read on this computer, sent nowhere and not kept.',
  practise: 'Try it with practice pictures',
  printed: {
    label: 'Printed scale measures, mm',
    hint: 'Drawn as 100. If it measures something else, enter it before you bring pictures in.',
    fault: 'Enter the length of the printed scale in millimetres, from 50 to 200, such as 94.',
  },
  pictures: 'Pictures brought in',
  more: (count) => `Show more of ${write.number(count)}`,
  progress: (read, all) => `${write.number(read)} of ${write.count(all, PICTURES)} read.`,
  stage: {
    waiting: 'Waiting',
    opening: 'Opening the file',
    decoding: 'Decoding the picture',
    measuring: 'Measuring',
    'let go': 'Not read. Bring it in again to read it.',
  },
  stop: 'Stop reading',
  clear: 'Remove all pictures',
  fault: {
    'file unread': 'This file cannot be read. Check that it is still there, then bring it in again.',
    'no picture': 'The browser finds no picture in this file. Bring in a JPEG, PNG, WebP or AVIF, at the size the camera took it.',
    'no picture inside': 'The browser finds no picture in this raw file. Bring in a JPEG of the same shot.',
    'only a small picture inside': 'This raw file holds only a small preview. Bring in a JPEG of the same shot at full size.',
    'too large': 'This picture is too large to be read here. Bring in one of at most 110 megapixels.',
    'too small': 'This picture is too small to be measured. Bring in the picture as the camera took it.',
    stopped: 'Reading this picture failed. Bring it in again, or take another one.',
  },
  found: (ramp) => (ramp ? 'The picture, with the target and the ramp outlined.' : 'The picture, with the target outlined.'),
  target: ({ tilt, resized }) => {
    const stands =
      tilt < 3
        ? 'The target is found, and square to the camera.'
        : `The target is found, but turned away by about ${write.degrees(tilt, 0)}. Stand it square to the camera.`;
    return resized === null
      ? stands
      : `${stands} This file was resized to ${write.percent(resized)} of what the camera took, which changes its sharpness. Bring in the picture as the camera took it.`;
  },
  notFound,
  focus: focusSentences,
  noFocus,
  moved,
  sharpened: 'This picture was sharpened, so its MTF50 flatters the lens. Turn sharpening off in the camera.',
  unslanted: (roll) =>
    `The target is turned by ${write.degrees(Math.abs(roll), 0)} ${roll < 0 ? 'anticlockwise' : 'clockwise'}, so its edges run along the pixels and cannot be measured. Turn it upright.`,
  unstated: 'The camera’s data is missing from this file, so a crop would go unnoticed. If it was cropped, bring in the picture as the camera took it.',
  crops: 'Edges at 100%',
  crop: edgeName,
  chart: {
    title: 'Sharpness along the ramp',
    said: (focus) => focusSentences(focus).join(' '),
    target: 'target',
    depth: (depth) => write.unit(depth, 'millimeter'),
  },
  figures: {
    title: 'Figures',
    edge: (reading) =>
      reading.measure.ok
        ? `${edgeName(reading)}: MTF50 ${write.number(reading.measure.value.mtf50, 3)} cycles a pixel, 95% between ${write.number(reading.measure.value.interval.low, 3)} and ${write.number(reading.measure.value.interval.high, 3)}.`
        : `${edgeName(reading)}: ${EDGE_FAULT[reading.measure.fault.is]}.`,
    target: ({ scale, roll, tilt }) =>
      `${write.number(scale, 2)} pixels to a millimetre, rolled by ${write.degrees(Math.round(roll * 10) / 10, 1)}, turned away by ${write.degrees(tilt, 1)}.`,
    focus: focusFigures,
  },
  keep: {
    label: 'Keep in the logbook',
    done: 'Kept in the logbook',
    what: (crops) => `Keeps the figures${crops === 0 ? '' : write.count(crops, CROPS)}, not the pictures.`,
    kept: 'It is in the history of this situation.',
    erase: 'Erase it again',
    noSituation: 'To keep this, open the logbook, choose the situation, and bring the pictures in from there.',
    noValue: 'To keep this, enter the value to check above.',
    another: 'This picture was taken with another body, lens or focal length than this situation has, so it cannot be kept here.',
  },
  camera: ({ width, height }, camera) =>
    line([
      `${write.number(width)} × ${write.number(height)} pixels`,
      camera !== null && camera.focalLength !== null && write.millimetres(camera.focalLength),
      camera !== null && camera.aperture !== null && `f/${write.number(camera.aperture, 1)}`,
      camera !== null && camera.distance !== null && write.distance(camera.distance),
      camera !== null && camera.taken !== null && write.dayAndTime(camera.taken),
    ]),
};

// Every stroke and label of the rig's sketch, kept to seven digits for rigs from close up to far away, and where each bound is met.
import { expect, test } from 'vitest';
import { degrees, fNumber } from '../../../src/optics/quantity.ts';
import { depthAround, printInFront, targetHeight, targetUnits } from '../../../src/optics/sketch/atTarget.ts';
import { aboveReach, fromAbove } from '../../../src/optics/sketch/fromAbove.ts';
import { fromTheSide, rampLine, sideReach } from '../../../src/optics/sketch/fromTheSide.ts';
import { lensFront, rigScale } from '../../../src/optics/sketch/rigScale.ts';
import { leaning, lensSizes, type AtTarget, type RigSizes } from '../../../src/optics/sketch/rigSizes.ts';
import { label, type Stroke } from '../../../src/optics/sketch/scene.ts';
import { sketchOf, type SketchWords } from '../../../src/optics/sketch/sketch.ts';
import { millimetres as mm } from '../../../src/units.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { RIG, TARGET } from './usualRig.ts';

const SMALL: AtTarget = { ...TARGET, width: mm(40), height: mm(60), field: mm(16), depth: { front: mm(0.1), behind: mm(0.2) }, allowedTilt: null };
const LARGE: AtTarget = { ...TARGET, width: mm(2400), height: mm(1800), field: mm(1200), depth: { front: mm(4000), behind: 'infinite' } };
const LONG: AtTarget = { ...TARGET, ramp: { above: 300, below: 40, width: 300, lean: degrees(30) }, depth: { front: mm(900), behind: mm(2000) } };
const RIGS: readonly RigSizes[] = [
  RIG,
  { ...RIG, target: null },
  { ...RIG, distance: mm(800), lens: { reach: 90, across: 65 }, lighting: 'steady lamp' },
  { ...RIG, distance: mm(120), lens: { reach: 100, across: 200 }, lighting: 'warm lamp', target: SMALL },
  { ...RIG, distance: mm(60_000), lens: lensSizes(mm(600), fNumber(4), null), lighting: 'mains lamp', target: LARGE },
  { ...RIG, distance: mm(1500), lens: { reach: 400, across: 160 }, target: LONG },
  { ...RIG, distance: mm(300), target: null },
  { ...RIG, distance: mm(9000), lens: { reach: 300, across: 90 }, target: SMALL },
];
const flat = (strokes: readonly Stroke[]): string[] =>
  strokes.map(
    (stroke) =>
      `${stroke.part} ${stroke.is} ${oneLine(stroke.is === 'disc' ? [stroke.middle.x, stroke.middle.y, stroke.radius] : stroke.points.flatMap(({ x, y }) => [x, y]))}`,
  );

test('the sizes of a lens, and how far the ramp leans', () => {
  const lenses = [14, 56, 57, 85, 400].flatMap((focal) =>
    [null, 1.4, 8].map((aperture) => lensSizes(mm(focal), aperture === null ? null : fNumber(aperture), null)),
  );
  expect(lenses.map(({ reach, across }) => oneLine([reach, across]))).toMatchSnapshot('lenses');
  expect([20, 53, 54, 55, 200].map((reach) => oneLine(lensSizes(mm(85), null, mm(reach))))).toMatchSnapshot('lens sizes');
  expect([TARGET, LONG].map((target) => oneLine(Object.values(leaning(target))))).toMatchSnapshot('leaning');
});

test('the scale of the rig, how far each view reaches, and the front of the lens', () => {
  const scales = RIGS.flatMap((rig) => [140, 320, 700].map((width) => ({ rig, scale: rigScale(rig, width) })));
  expect(
    scales.map(({ rig, scale }) => oneLine([...Object.values(scale), lensFront(rig, scale), aboveReach(rig, scale), ...Object.values(sideReach(rig, scale))])),
  ).toMatchSnapshot('lens front');
  const drawn = { along: 0.1, camera: 0.1, target: 0.1, film: 10, plane: 300 };
  const reaches = RIGS.map((rig) =>
    [0.01, 0.1, 0.3, 1]
      .map((camera) => ({ ...drawn, along: camera / 2, camera }))
      .flatMap((scale) => [aboveReach(rig, scale), ...Object.values(sideReach(rig, scale))]),
  );
  expect(reaches.map(oneLine)).toMatchSnapshot('reaches');
});

test('the views from the side and from above', () => {
  expect(RIGS.slice(0, 6).map((rig) => flat([...fromTheSide(rig, rigScale(rig, 320), 50), ...fromAbove(rig, rigScale(rig, 320), 90)]))).toMatchSnapshot(
    'from the side',
  );
  expect(flat([rampLine(TARGET, 100, 20, 0.5), rampLine(LONG, 100, 20, 0.5)])).toMatchSnapshot('ramp line');
});

test('the target larger', () => {
  const widths = [60, 120, 320, 900];
  expect(
    [TARGET, SMALL, LARGE, LONG].map((target) =>
      oneLine(widths.map((width) => [targetUnits(target, width), targetHeight(target, targetUnits(target, width))])),
    ),
  ).toMatchSnapshot('target units');
  const bounds = { x: 3, y: 5, width: 200, height: 92 };
  expect(
    [TARGET, SMALL, LARGE, LONG].map((target) =>
      flat([...printInFront(target, targetUnits(target, 200), bounds), ...depthAround(target, targetUnits(target, 200), bounds)]),
    ),
  ).toMatchSnapshot('print in front');
  expect(
    [0.74, 0.75, 0.76, 40, 99, 101].map((deep) => flat(depthAround({ ...TARGET, depth: { front: mm(deep), behind: mm(deep) } }, 1, bounds).slice(0, 1))),
  ).toMatchSnapshot('depth around');
});

test('labels in a strip, at its start, middle and end', () => {
  const texts = ['', 'a', 'Sharp 119 mm in front', 'Sharp 119 mm in front, 126 mm behind, and so on for a while'];
  expect(
    texts.flatMap((text) => (['start', 'middle', 'end'] as const).map((anchor) => oneLine(label('depth', text, anchor, { x: 7, y: 11, width: 180 })))),
  ).toMatchSnapshot();
});

const WORDS: SketchWords = {
  views: { 'from the side': 'From the side', 'from above': 'From above', 'at the target': 'At the target, larger' },
  answers: {
    stands: '4.25 m, 50 focal lengths',
    light: 'Light: EV 7',
    square: 'Square to 7.1°',
    prints: 'Field 180 mm',
    depth: 'Sharp 119 mm in front, 126 mm behind',
  },
};

test('where all of it stands on the sketch', () => {
  const wordings: readonly SketchWords[] = [
    WORDS,
    { ...WORDS, answers: {} },
    { ...WORDS, answers: { ...WORDS.answers, light: 'Light: EV 7 or more, from both sides at once, please' } },
  ];
  const sketches = [RIG, ...RIGS.slice(1, 2), ...RIGS.slice(3, 4)].flatMap((rig) =>
    wordings.flatMap((words) => [140, 249, 250, 251, 420].map((width) => sketchOf(rig, words, width))),
  );
  expect(
    sketches.map(({ width, height, strokes, labels }) => {
      const points = strokes.flatMap((stroke) => (stroke.is === 'disc' ? [stroke.middle] : stroke.points));
      return oneLine([
        width,
        height,
        strokes.length,
        points.reduce((sum, { x, y }, at) => sum + x * (at % 7) + y * (at % 11), 0),
        labels.map(({ of, at, box }) => `${of} ${oneLine([at.x, at.y, box.height])}`),
      ]);
    }),
  ).toMatchSnapshot();
});

test('the view from above and the light share a line as long as eight units lie between them', () => {
  const heights = Array.from({ length: 40 }, (_, at) =>
    sketchOf({ ...RIG, target: null }, { ...WORDS, answers: { light: 'Light: EV 7' } }, 180 + at).labels.map(({ at: { y } }) => y),
  );
  expect(heights.map(oneLine)).toMatchSnapshot();
  const wide = label('from above', WORDS.views['from above'], 'start', { x: 0, y: 0, width: 900 }).box.width;
  const light = label('light', 'Light: EV 7', 'end', { x: 0, y: 0, width: 900 }).box.width;
  const row = (width: number) =>
    new Set(
      sketchOf({ ...RIG, target: null }, { ...WORDS, answers: { light: 'Light: EV 7' } }, width)
        .labels.slice(1)
        .map(({ at: { y } }) => y),
    ).size;
  expect([row(wide + light + 8.01), row(wide + light + 7.99)]).toEqual([1, 2]);
});

// Contract of the drawing of the rig: what it shows is in proportion, nothing lies outside it, and no label lies on another or
// on a stroke, whatever the rig, the width of the panel and the length of the words.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degrees, fNumber } from '../../../src/optics/quantity.ts';
import { lensSizes, type RigSizes } from '../../../src/optics/sketch/rigSizes.ts';
import type { Bounds, RigPart, Sketch, Stroke } from '../../../src/optics/sketch/scene.ts';
import { sketchOf, type SketchWords } from '../../../src/optics/sketch/sketch.ts';
import { millimetres as mm } from '../../../src/units.ts';
import { RIG, TARGET } from './usualRig.ts';

const WORDS: SketchWords = {
  views: { 'from the side': 'From the side', 'from above': 'From above', 'at the target': 'At the target, larger' },
  answers: {
    stands: '4.25 m, 50 focal lengths',
    light: 'Light: EV 7 or more',
    square: 'Square to within 7.1°',
    prints: 'Field 180 mm, one sheet',
    depth: 'Sharp 119 mm in front, 126 mm behind',
  },
};
/** Near enough that both ends are seen without being drawn larger. */
const NEAR: RigSizes = { ...RIG, distance: mm(800), lens: { reach: 90, across: 65 } };

const pointsOf = (stroke: Stroke): readonly { x: number; y: number }[] =>
  stroke.is === 'disc' ? [-1, 1].map((side) => ({ x: stroke.middle.x + side * stroke.radius, y: stroke.middle.y + side * stroke.radius })) : stroke.points;
const boxOf = (stroke: Stroke): Bounds => {
  const [xs, ys] = [pointsOf(stroke).map(({ x }) => x), pointsOf(stroke).map(({ y }) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
};
const boxes = ({ strokes }: Sketch, part: RigPart): readonly Bounds[] => strokes.filter((stroke) => stroke.part === part).map(boxOf);
const overlap = (one: Bounds, other: Bounds): boolean =>
  one.x < other.x + other.width - 1e-6 && other.x < one.x + one.width - 1e-6 && one.y < other.y + other.height - 1e-6 && other.y < one.y + one.height - 1e-6;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyTarget = fc.record({
  width: between(142, 2600).map(mm),
  height: between(150, 2600).map(mm),
  field: between(9, 140).map(mm),
  ramp: fc.record({ above: between(40, 150), below: between(30, 140), width: fc.constant(127), lean: fc.constant(degrees(45)) }),
  depth: fc.record({ front: between(0.02, 90_000).map(mm), behind: fc.oneof(between(0.02, 900_000).map(mm), fc.constant('infinite' as const)) }),
  allowedTilt: fc.option(between(0.01, 80).map(degrees)),
});
const anyRig: fc.Arbitrary<RigSizes> = fc.record({
  distance: between(60, 500_000).map(mm),
  lens: fc.record({ reach: between(54, 800), across: between(65, 220) }),
  lighting: fc.constantFrom('daylight', 'steady lamp', 'mains lamp', 'warm lamp'),
  target: fc.option(anyTarget),
});
const someWords = fc.array(fc.string({ minLength: 1, maxLength: 24 }), { minLength: 1, maxLength: 9 }).map((all) => all.join(' '));
const anyWords: fc.Arbitrary<SketchWords> = fc.record({
  views: fc.record({ 'from the side': someWords, 'from above': someWords, 'at the target': someWords }),
  answers: fc.record({ stands: someWords, light: someWords, square: someWords, prints: someWords, depth: someWords }, { requiredKeys: [] }),
});
const anyWidth = fc.integer({ min: 140, max: 600 });

describe('the drawing of the rig', () => {
  test('has nothing outside it', () => {
    fc.assert(
      fc.property(anyRig, anyWords, anyWidth, (rig, words, width) => {
        const sketch = sketchOf(rig, words, width);
        for (const { x, y, width: across, height } of [...sketch.strokes.map(boxOf), ...sketch.labels.map((label) => label.box)]) {
          expect(Math.min(x, y)).toBeGreaterThanOrEqual(-1e-6);
          expect(x + across).toBeLessThanOrEqual(width + 1e-6);
          expect(y + height).toBeLessThanOrEqual(sketch.height + 1e-6);
        }
      }),
    );
  });

  test('has no label on another, nor on a stroke', () => {
    fc.assert(
      fc.property(anyRig, anyWords, anyWidth, (rig, words, width) => {
        const { labels, strokes } = sketchOf(rig, words, width);
        labels.forEach(({ box }, index) => {
          expect(labels.slice(index + 1).filter((other) => overlap(box, other.box))).toEqual([]);
          expect(strokes.filter((stroke) => overlap(box, boxOf(stroke)))).toEqual([]);
        });
      }),
    );
  });

  test('writes every word that it is given', () => {
    fc.assert(
      fc.property(anyWords, anyWidth, (words, width) => {
        const written = sketchOf(RIG, words, width).labels.map(({ lines }) => lines.join('').replaceAll(/\s/gu, ''));
        for (const text of [...Object.values(words.views), ...Object.values(words.answers)].map((one) => one.replaceAll(/\s/gu, '')).filter(Boolean))
          expect(written).toContain(text);
      }),
    );
  });

  test('draws the distance true in both views, from the film plane to the target', () => {
    fc.assert(
      fc.property(anyRig, anyWidth, (rig, width) => {
        const sketch = sketchOf(rig, WORDS, width);
        const [distance] = boxes(sketch, 'measure');
        const [side, above] = boxes(sketch, 'print');
        expect(side!.x).toBeCloseTo(distance!.x + distance!.width, 6);
        expect(above!.x).toBeCloseTo(side!.x, 6);
      }),
    );
  });

  test('draws every part by one measure where all can be seen', () => {
    const sketch = sketchOf(NEAR, WORDS, 336);
    const perMm = boxes(sketch, 'measure')[0]!.width / 800;
    const [side, above] = boxes(sketch, 'print');
    expect(side!.height / perMm).toBeCloseTo(250, 6);
    expect(above!.height / perMm).toBeCloseTo(192, 6);
    expect(boxes(sketch, 'ramp')[0]!.width / perMm).toBeCloseTo(196 * Math.SQRT1_2, 6);
    expect(boxes(sketch, 'camera')[0]!.width / perMm).toBeCloseTo(74, 6);
    const [lens] = boxes(sketch, 'lens');
    expect(lens!.width / perMm).toBeCloseTo(90 - 44, 6);
    expect(lens!.height / perMm).toBeCloseTo(65, 6);
  });

  test('draws an end that would be too small larger, in proportion within itself', () => {
    const sketch = sketchOf({ ...RIG, distance: mm(30_000) }, WORDS, 336);
    const [camera] = boxes(sketch, 'camera');
    expect(camera!.width).toBeCloseTo(15, 6);
    expect(boxes(sketch, 'lens')[0]!.width / camera!.width).toBeCloseTo((RIG.lens.reach - 44) / 74, 6);
    const [side, above] = boxes(sketch, 'print');
    expect(above!.height / side!.height).toBeCloseTo(192 / 250, 6);
  });

  test('draws a distance twice as long twice as long beside the target while both fit', () => {
    const shares = [800, 1600].map((distance) => {
      const sketch = sketchOf({ ...NEAR, distance: mm(distance) }, WORDS, 600);
      return boxes(sketch, 'measure')[0]!.width / boxes(sketch, 'print')[0]!.height;
    });
    expect(shares[1]! / shares[0]!).toBeCloseTo(2, 6);
  });

  test('draws the depth of field by the measure of the print beside it, and cuts off what has no end', () => {
    const print = (sketch: Sketch): Bounds => boxes(sketch, 'print').at(-2)!;
    const sketch = sketchOf(RIG, WORDS, 336);
    const perMm = print(sketch).height / 250;
    expect(print(sketch).width / perMm).toBeCloseTo(192, 6);
    expect(boxes(sketch, 'field')[0]!.width / perMm).toBeCloseTo(180, 6);
    expect(boxes(sketch, 'depth')[0]!.width / perMm).toBeCloseTo(119 + 126, 6);
    const endless = sketchOf({ ...RIG, target: { ...TARGET, depth: { front: mm(119), behind: 'infinite' } } }, WORDS, 336);
    const [depth] = boxes(endless, 'depth');
    expect(depth!.x + depth!.width).toBeCloseTo(336, 6);
  });

  test('shows the tilt that is allowed as it is, to either side', () => {
    const { strokes } = sketchOf(RIG, WORDS, 336);
    const turned = strokes.flatMap((stroke) => {
      if (stroke.part !== 'allowed' || stroke.is === 'disc') return [];
      const [from, to] = stroke.points;
      return [(Math.atan2(to!.x - from!.x, to!.y - from!.y) * 180) / Math.PI];
    });
    expect(turned.map((angle) => Math.round(angle * 10) / 10)).toEqual([7.1, -7.1]);
  });

  test('leaves out what the aperture tells until it is known', () => {
    const { strokes, labels } = sketchOf({ ...RIG, target: null }, { ...WORDS, answers: { stands: WORDS.answers.stands! } }, 336);
    expect(labels.map(({ of }) => of)).toEqual(['from the side', 'stands', 'from above']);
    expect(strokes.filter(({ part }) => part === 'depth' || part === 'ramp' || part === 'allowed')).toEqual([]);
  });

  test('stands a lamp on either side, and for daylight a sun', () => {
    const shapes = (lighting: RigSizes['lighting']) => sketchOf({ ...RIG, lighting }, WORDS, 336).strokes.filter(({ part }) => part === 'lamp');
    expect(shapes('mains lamp').map(({ is }) => is)).toEqual(['area', 'area']);
    expect(shapes('daylight').filter(({ is }) => is === 'disc')).toHaveLength(2);
  });
});

test('the front of a lens stands where it was measured to stand, or where such a lens ends', () => {
  expect(lensSizes(mm(85), fNumber(1.8), mm(150)).reach).toBe(150);
  expect(lensSizes(mm(85), fNumber(1.8), null).reach).toBe(112);
  expect(lensSizes(mm(20), null, null)).toEqual({ reach: 89, across: 65 });
  expect(lensSizes(mm(300), fNumber(2.8), null).across).toBeCloseTo(125.9, 1);
});

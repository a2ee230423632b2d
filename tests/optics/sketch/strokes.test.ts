// Contract of the strokes, worked out by hand for one rig: a metre at 0.3 units a millimetre, the film plane at 10 and the target at 310.
import { describe, expect, test } from 'vitest';
import { degrees } from '../../../src/optics/quantity.ts';
import { depthAround, printInFront, targetHeight, targetUnits } from '../../../src/optics/sketch/atTarget.ts';
import { aboveReach, fromAbove } from '../../../src/optics/sketch/fromAbove.ts';
import { fromTheSide, sideReach } from '../../../src/optics/sketch/fromTheSide.ts';
import { lensFront, rigScale } from '../../../src/optics/sketch/rigScale.ts';
import type { AtTarget, RigSizes } from '../../../src/optics/sketch/rigSizes.ts';
import type { RigPart, Stroke } from '../../../src/optics/sketch/scene.ts';
import { millimetres as mm } from '../../../src/units.ts';

/** Its ramp of 80 and 40 leans by 30 degrees: 103.92 down, 40 behind and 20 before. */
const TARGET: AtTarget = {
  width: mm(140),
  height: mm(100),
  field: mm(80),
  ramp: { above: 80, below: 40, width: 100, lean: degrees(30) },
  depth: { front: mm(20), behind: mm(30) },
  allowedTilt: degrees(30),
};
const RIG: RigSizes = { distance: mm(1000), lens: { reach: 100, across: 80 }, lighting: 'mains lamp', target: TARGET };
const DOWN = 120 * Math.cos(Math.PI / 6);
const scale = rigScale(RIG, 344);

/** The points of a part's strokes, to a hundredth; of a disc its middle. */
const points = (strokes: readonly Stroke[], part: RigPart): (readonly [number, number])[][] =>
  strokes
    .filter((stroke) => stroke.part === part)
    .map((stroke) =>
      (stroke.is === 'disc' ? [stroke.middle] : stroke.points).map(({ x, y }) => [Math.round(100 * x) / 100, Math.round(100 * y) / 100] as const),
    );

describe('the scale', () => {
  test('is what fits between the ends, at most 0.3, and no more than the target may be tall', () => {
    expect(scale).toEqual({ along: 0.3, camera: 0.3, target: 0.3, film: 10, plane: 310 });
    expect(rigScale({ ...RIG, distance: mm(500) }, 344)).toMatchObject({ along: 0.3, film: 85, plane: 235 });
    expect(rigScale({ ...RIG, target: { ...TARGET, height: mm(420 - DOWN) } }, 344).along).toBeCloseTo(0.2, 6);
    expect(rigScale({ ...RIG, distance: mm(500), target: null }, 344).along).toBeCloseTo(84 / 297, 6);
  });

  test('of either end is larger where it would be too small', () => {
    const far = rigScale({ ...RIG, distance: mm(30_000) }, 344);
    expect(far.along).toBeCloseTo(0.01, 9);
    expect(far.camera).toBeCloseTo(15 / 74, 6);
    expect(far.target).toBeCloseTo(30 / (100 + DOWN), 6);
    // A long lens is drawn as large as it may hide: 0.3 of 300 units.
    expect(rigScale({ ...RIG, distance: mm(30_000), lens: { reach: 600, across: 80 } }, 344).camera).toBeCloseTo(90 / 600, 6);
  });

  test('lets the front of the lens hide 0.7 of the distance at most', () => {
    expect(lensFront(RIG, scale)).toBe(40);
    expect(lensFront({ ...RIG, lens: { reach: 900, across: 80 } }, scale)).toBeCloseTo(10 + 210, 9);
  });
});

describe('from the side', () => {
  const strokes = fromTheSide(RIG, scale, 100);

  test('reaches from the finder to the line of the distance', () => {
    expect(sideReach(RIG, scale).up).toBeCloseTo(62 * 0.3 + 1, 6);
    expect(sideReach(RIG, scale).down).toBeCloseTo(15 + 2 + 0.3 * DOWN + 9 + 4, 6);
    const bare = sideReach({ ...RIG, target: null, lens: { reach: 100, across: 400 } }, scale);
    expect([bare.up, bare.down]).toEqual([61, 60 + 13].map((reach) => expect.closeTo(reach, 6)));
    expect(sideReach({ ...RIG, target: null }, scale).up).toBeCloseTo(297 * 0.15 + 1, 6);
  });

  test('has the body, the lens, the print and the ramp behind and before it', () => {
    expect(points(strokes, 'axis')).toEqual([[[40, 100], [310, 100]]]); // prettier-ignore
    expect(points(strokes, 'camera')).toEqual([[[1, 116.5], [1, 88.6], [5.8, 81.4], [17.2, 81.4], [23.2, 88.6], [23.2, 116.5]]]); // prettier-ignore
    expect(points(strokes, 'lens')).toEqual([[[23.2, 88], [40, 88], [40, 112], [23.2, 112]]]); // prettier-ignore
    expect(points(strokes, 'print')).toEqual([[[310, 85], [310, 115]]]); // prettier-ignore
    expect(points(strokes, 'ramp')).toEqual([[[322, 117], [304, 148.18]]]); // prettier-ignore
  });

  test('has the distance below, with a tick at either end', () => {
    expect(points(strokes, 'measure')).toEqual([
      [[10, 157.18], [310, 157.18]],
      [[10, 153.18], [10, 161.18]],
      [[310, 153.18], [310, 161.18]],
    ]); // prettier-ignore
  });
});

describe('from above', () => {
  const strokes = fromAbove(RIG, scale, 100);

  test('reaches as far as the lamps, or whatever is wider', () => {
    // A sixth of a metre, at 45 degrees: 35.36 units, and ten for the lamp.
    expect(aboveReach(RIG, scale)).toBeCloseTo(35.355 + 10 + 1, 2);
    expect(aboveReach({ ...RIG, target: { ...TARGET, width: mm(400) } }, scale)).toBe(61);
    expect(aboveReach({ ...RIG, lens: { reach: 100, across: 400 } }, scale)).toBe(61);
    expect(aboveReach({ ...RIG, distance: mm(100) }, scale)).toBe(33);
    expect(aboveReach({ ...RIG, distance: mm(9000) }, scale)).toBeCloseTo(212.132 + 11, 2);
  });

  test('has the body with its grip, the lens and the print', () => {
    expect(points(strokes, 'camera')).toEqual([[[1, 79], [16, 79], [23.2, 89.8], [23.2, 111.4], [28, 113.2], [28, 121], [1, 121]]]); // prettier-ignore
    expect(points(strokes, 'lens')).toEqual([[[23.2, 88], [40, 88], [40, 112], [23.2, 112]]]); // prettier-ignore
    expect(points(strokes, 'print')).toEqual([[[310, 79], [310, 121]]]); // prettier-ignore
    expect(points(strokes, 'axis')).toEqual([[[40, 100], [310, 100]]]); // prettier-ignore
  });

  test('has the tilt that is allowed, 17 units to either end, one way and the other', () => {
    expect(points(strokes, 'allowed')).toEqual([
      [[301.5, 85.28], [318.5, 114.72]],
      [[318.5, 85.28], [301.5, 114.72]],
    ]); // prettier-ignore
    expect(points(fromAbove({ ...RIG, target: { ...TARGET, allowedTilt: null } }, scale, 100), 'allowed')).toEqual([]);
  });

  test('has a lamp on either side that opens towards the target, and its light', () => {
    // From (274.64, 64.64) and (274.64, 135.36); ten units on the way to the target, and up to three before it.
    expect(points(strokes, 'ray')).toEqual([
      [[281.72, 71.72], [307.88, 97.88]],
      [[281.72, 128.28], [307.88, 102.12]],
    ]); // prettier-ignore
    expect(points(strokes, 'lamp')).toEqual([
      [[269.69, 62.52], [273.23, 71.72], [281.72, 63.23], [272.52, 59.69]],
      [[272.52, 140.31], [281.72, 136.77], [273.23, 128.28], [269.69, 137.48]],
    ]); // prettier-ignore
  });

  test('has a sun instead by daylight, with seven rays of three units and one that is its light', () => {
    const sun = points(fromAbove({ ...RIG, lighting: 'daylight' }, scale, 100), 'lamp');
    expect(sun).toHaveLength(16);
    expect(sun[0]).toEqual([[274.64, 64.64]]);
    // At 45 degrees from the way to the target, which leads down to the right: straight down.
    expect(sun[1]).toEqual([[274.64, 70.64], [274.64, 73.64]]); // prettier-ignore
    expect(sun[2]).toEqual([[270.4, 68.89], [268.28, 71.01]]); // prettier-ignore
    expect(sun[7]).toEqual([[280.64, 64.64], [283.64, 64.64]]); // prettier-ignore
  });
});

describe('at the target', () => {
  const box = { x: 10, y: 20, width: 200, height: 90 };

  test('it is as large as the box, and as its height allows', () => {
    expect(targetUnits(TARGET, 42)).toBeCloseTo(0.3, 9);
    expect(targetUnits({ ...TARGET, width: mm(80) }, 30)).toBeCloseTo(0.3, 9);
    expect(targetUnits(TARGET, 900)).toBeCloseTo(89 / (100 + DOWN), 9);
    // From the side, half of it must hold the ramp behind or before, or half the print's height.
    expect(targetUnits({ ...TARGET, width: mm(20), ramp: { ...TARGET.ramp, width: 10, above: 400 } }, 40)).toBeCloseTo(20 / 200, 9);
    expect(targetUnits({ ...TARGET, width: mm(20), ramp: { ...TARGET.ramp, width: 10, below: 400 } }, 40)).toBeCloseTo(20 / 200, 9);
    expect(targetUnits({ ...TARGET, width: mm(20), ramp: { ...TARGET.ramp, width: 10 } }, 10)).toBeCloseTo(5 / 50, 9);
    expect(targetHeight(TARGET, 0.5)).toBeCloseTo((100 + DOWN) / 2 + 3, 9);
  });

  test('the print stands in the middle with a plus, the ramp below it with five lines', () => {
    const strokes = printInFront(TARGET, 0.5, box);
    expect(points(strokes, 'print')).toEqual([[[75, 20], [145, 20], [145, 70], [75, 70]]]); // prettier-ignore
    expect(points(strokes, 'field')).toEqual([[[90, 25], [130, 25], [130, 65], [90, 65]]]); // prettier-ignore
    expect(points(strokes, 'ramp')).toEqual([[[85, 73], [135, 73], [135, 124.96], [85, 124.96]]]); // prettier-ignore
    expect(points(strokes, 'measure')).toEqual([
      [[105, 45], [115, 45]],
      [[110, 40], [110, 50]],
      [[97.5, 81.66], [122.5, 81.66]],
      [[97.5, 90.32], [122.5, 90.32]],
      [[85, 98.98], [135, 98.98]],
      [[97.5, 107.64], [122.5, 107.64]],
      [[97.5, 116.3], [122.5, 116.3]],
    ]); // prettier-ignore
    expect(points(printInFront({ ...TARGET, field: mm(40) }, 0.5, box), 'measure')[0]).toEqual([[107, 45], [113, 45]]); // prettier-ignore
  });

  test('the depth lies around the plane, cut off at the box, and is seen however thin', () => {
    const depth = (front: number, behind: number | 'infinite') =>
      points(depthAround({ ...TARGET, depth: { front: mm(front), behind: behind === 'infinite' ? behind : mm(behind) } }, 0.5, box), 'depth')[0]?.slice(0, 3);
    expect(depth(20, 30)).toEqual([[100, 20], [125, 20], [125, 110]]); // prettier-ignore
    expect(depth(900, 900)).toEqual([[10, 20], [210, 20], [210, 110]]); // prettier-ignore
    expect(depth(0.1, 'infinite')).toEqual([[109.25, 20], [210, 20], [210, 110]]); // prettier-ignore
    expect(depth(20, 0.1)?.[1]).toEqual([110.75, 20]);
    const strokes = depthAround(TARGET, 0.5, box);
    expect(points(strokes, 'axis')).toEqual([[[10, 45], [110, 45]]]); // prettier-ignore
    expect(points(strokes, 'print')).toEqual([[[110, 20], [110, 70]]]); // prettier-ignore
    expect(points(strokes, 'ramp')).toEqual([[[130, 73], [100, 124.96]]]); // prettier-ignore
  });
});

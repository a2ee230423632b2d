// Magnification and the ways to find a tilt, kept to seven digits, round each bound.
import { expect, test } from 'vitest';
import { judgeTilt, nearerEdges, rectangleFor, tiltFromSides, type Tilt } from '../../src/optics/fourSides.ts';
import {
  distanceFor,
  fromFilmPlane,
  lensToTarget,
  measuredMagnification,
  shortenedFocalLength,
  thinLensMagnification,
} from '../../src/optics/magnification.ts';
import { mirrorOffset, pixelsOnSensor, spotOffset, tiltFromMirror, tiltFromSpot } from '../../src/optics/mirror.ts';
import { degrees, fromRadians, magnification, radians } from '../../src/optics/quantity.ts';
import { millimetres as mm } from '../../src/units.ts';
import { oneLine } from '../kept/oneLine.ts';

const ORIGINS = ['film plane', 'front of lens'] as const;

test('the magnification of a thin lens, from where it begins', () => {
  const distances = [99, 100, 100.5, 101, 200, 399, 400, 400.5, 401, 420, 600, 2500, 90_000, 600_000].map(mm);
  expect(ORIGINS.map((from) => distances.map((distance) => oneLine(thinLensMagnification(mm(100), { from, distance }))))).toMatchSnapshot();
});

test('lengths that follow from a magnification', () => {
  const sizes = [0.001, 0.02, 0.5, 1, 3].map(magnification);
  const from = (m: (typeof sizes)[number]) => ORIGINS.map((origin) => shortenedFocalLength({ from: origin, distance: mm(900) }, m));
  expect(sizes.map((m) => oneLine([distanceFor(mm(85), m), lensToTarget(mm(85), m), ...from(m)]))).toMatchSnapshot('distance for');
  expect(oneLine(ORIGINS.map((origin) => fromFilmPlane({ from: origin, distance: mm(1000) }, mm(130))))).toMatchSnapshot('from film plane');
});

test('a magnification that was measured, round the bounds of what can be', () => {
  const cases = [
    [100, 400, 0.005],
    [0, 400, 0.005],
    [0.5, 40, 0.005],
    [-1, 40, 0.005],
    [10, 9.9, 0.005],
    [10, 10, 0.005],
    [10, 10.5, 0.005],
    [10, Number.NaN, 0.005],
    [10, 400, 0.0005],
    [10, 400, 0.0006],
    [10, 400, 0.0011],
    [10, 400, 0.049],
    [10, 400, 0.05],
    [10, 400, 0.07],
    [10_000, 10, 0.001],
  ] as const;
  expect(cases.map(([length, pixels, pitch]) => oneLine(measuredMagnification(mm(length), pixels, mm(pitch))))).toMatchSnapshot();
});

test('the mirror and the spot of light', () => {
  const tilts = [-7, 0, 0.2, 12, 40].map(degrees);
  expect(oneLine(tilts.flatMap((tilt) => [mirrorOffset(mm(85), tilt), spotOffset(mm(4000), tilt), radians(tilt), fromRadians(tilt)]))).toMatchSnapshot(
    'mirror offset',
  );
  expect(
    [-100, -50, 0, 0.5, 3, 99, 100, 100.5, 102, 103, 104, 210].map((offset) =>
      oneLine([tiltFromMirror(mm(100), mm(offset)), tiltFromSpot(mm(100), mm(offset))]),
    ),
  ).toMatchSnapshot('tilt from mirror');
  expect(pixelsOnSensor(812, mm(0.0059))).toBeCloseTo(4.7908, 10);
});

test('the tilt from four sides', () => {
  const sides = [
    [1000, 1000, 1000, 1000],
    [1010, 990, 1000, 1003],
    [990, 1010, 1003, 1000],
    [0.5, 0.51, 0.49, 0.5],
    [0, 1000, 1000, 1000],
    [1000, 1000, 1000, 0],
    [1000, Number.POSITIVE_INFINITY, 1000, 1000],
    [1020, 1000, 1000, 1020],
    [1050, 1000, 1000, 1000],
    [1000, 1000, 1000, 1053],
    [1053, 1000, 1000, 1053],
    [1060, 1000, 1000, 1000],
    [1000, 1000, 1000, 1090],
    [1000, 1000, 1060, 1000],
  ] as const;
  const rectangles = [
    { width: mm(200), height: mm(200), fromLens: mm(2000) },
    { width: mm(180), height: mm(240), fromLens: mm(900) },
  ];
  expect(
    rectangles.map((rectangle) =>
      sides.flatMap(([left, right, top, bottom]) => [0.005, 0.2].map((error) => oneLine(tiltFromSides({ left, right, top, bottom }, rectangle, error)))),
    ),
  ).toMatchSnapshot();
});

test('a verdict on a tilt, at the bounds of what can be told', () => {
  const room = { fromLens: mm(2000), seen: { width: mm(600), height: mm(400) }, error: 0.005 };
  const tilt = (whole: number, uncertainty: number): Tilt => ({
    sideways: degrees(1),
    leaning: degrees(-1),
    whole: degrees(whole),
    uncertainty: degrees(uncertainty),
  });
  const tilts = [tilt(1, 2), tilt(1, 2.1), tilt(9, 2), tilt(9.1, 2), tilt(5, 2), tilt(30, 1)];
  expect(tilts.map((each) => [oneLine(judgeTilt(each, degrees(5))), oneLine(judgeTilt(each, degrees(5), room))])).toMatchSnapshot('judge tilt');
  expect(
    [0.5, 2, 8, 40].map((allowed) => oneLine([rectangleFor(degrees(allowed), room), judgeTilt(tilt(allowed, 2), degrees(allowed), room)])),
  ).toMatchSnapshot('rectangle for');
  const apart = rectangleFor(degrees(2), room);
  const seen = [mm(apart), mm(apart * 1.001), mm(apart * 0.999)];
  expect(seen.map((side) => oneLine(judgeTilt(tilt(8, 2), degrees(8), { ...room, seen: { width: side, height: mm(900) } })))).toMatchSnapshot('judge tilt 3');
  expect(seen.map((side) => oneLine(judgeTilt(tilt(8, 2), degrees(8), { ...room, seen: { width: mm(900), height: side } })))).toMatchSnapshot('judge tilt 4');
});

test('the edges that stand nearer, down to a third of the other tilt', () => {
  const pairs = [-3, -1, -0.9, 0, 0.9, 1, 1.1, 3].flatMap((one) => [-3, -1, 0, 1, 3].map((other) => [one, other] as const));
  expect(oneLine(pairs.map(([one, other]) => nearerEdges({ sideways: degrees(one), leaning: degrees(other) }).join()))).toMatchSnapshot('nearer edges');
  expect(oneLine(pairs.map(([one, other]) => nearerEdges({ sideways: degrees(other), leaning: degrees(one) }).join()))).toMatchSnapshot('nearer edges 2');
});

// What the bench reckons of distance, depth and squareness, kept to seven digits over inputs that enter every branch and lie below,
// at and above each bound. That the figures are right is held beside this.
import { expect, test } from 'vitest';
import { benchOf, type Rig } from '../../src/optics/bench.ts';
import { apertureWith, convertedError, focalLengthWith, type ConverterFactor } from '../../src/optics/converter.ts';
import { depthOfField, hyperfocal, limitsOfField, shareOfDepth, type Blur } from '../../src/optics/depthOfField.ts';
import { airyDisc, airyShare, depthOfFocus, quarterWaveDepth } from '../../src/optics/depthOfFocus.ts';
import { benchDistance, usualRange, type DistanceWish } from '../../src/optics/distance.ts';
import { placeDepth, type FrontShare } from '../../src/optics/placement.ts';
import { degrees, fNumber, magnification } from '../../src/optics/quantity.ts';
import { confusion, pixelPitch, readSensor, SENSORS, traditionalConfusion, writeSensor } from '../../src/optics/sensor.ts';
import { allowedTilt, areaAtTarget, depthAcross, edgeDefocus, eyeIsEnough } from '../../src/optics/squareness.ts';
import { bandWidth, stepAtSensor, stepAtTarget, worthOfStep, type StepWorth } from '../../src/optics/stepWorth.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { millimetres as mm, steps } from '../../src/units.ts';
import { oneLine } from '../kept/oneLine.ts';

const BLURS: readonly Blur[] = [
  { aperture: fNumber(1.4), confusion: mm(0.02) },
  { aperture: fNumber(2.8), confusion: mm(0.03) },
  { aperture: fNumber(11), confusion: mm(0.019), pupilRatio: 0.6 },
  { aperture: fNumber(4), confusion: mm(0.0288), pupilRatio: 2.2 },
];
const SIZES = [0.0003, 0.002, 0.02, 0.11, 0.5, 1, 2.5].map(magnification);
const FOCALS = [14, 50, 85, 400].map(mm);
const WORTHS = [0.01, 0.125, 0.9] as StepWorth[];

test('the depth of field and the depth of focus', () => {
  expect(
    BLURS.map((blur) => [
      oneLine(FOCALS.map((focal) => hyperfocal(blur, focal))),
      oneLine(SIZES.map((m) => depthOfFocus(blur, m))),
      oneLine([depthOfFocus(blur, 0), airyShare(blur), airyDisc(blur.aperture), airyDisc(blur.aperture, mm(0.0007)), quarterWaveDepth(blur.aperture)]),
      ...FOCALS.map((focal) => oneLine(SIZES.flatMap((m) => Object.values(depthOfField(blur, m, focal))))),
    ]),
  ).toMatchSnapshot();
});

test('the limits of the field, and the share of it that an error uses', () => {
  const fields = [
    { front: mm(40), behind: mm(50), total: mm(90) },
    { front: mm(40), behind: 'infinite', total: 'infinite' },
  ] as const;
  expect(
    fields.map((field) => oneLine([limitsOfField(field, mm(1000)), [-80, -1, -0.5, 0, 0.5, 1, 25].map((error) => shareOfDepth(error, field))])),
  ).toMatchSnapshot();
});

test('the distance for every wish, round each bound of what it is good for', () => {
  const wishes: readonly DistanceWish[] = [
    { wish: 'usual' },
    ...[100, 2474, 2475, 2476, 3000, 4949, 4950, 4951, 5049, 5050, 5051, 8000].map((distance): DistanceWish => ({ wish: 'used', distance: mm(distance) })),
    ...[3000, 5000, 9000].map((longest): DistanceWish => ({ wish: 'room', longest: mm(longest) })),
    ...[0.01, 0.5, 1].map((m): DistanceWish => ({ wish: 'macro', magnification: magnification(m) })),
  ];
  const closest = [null, 1000, 2475, 2500, 5000, 6000].map((each) => (each === null ? null : mm(each)));
  expect(closest.map((closestFocus) => wishes.map((wish) => oneLine(benchDistance({ focalLength: mm(100), closestFocus }, wish, 'm'))))).toMatchSnapshot(
    'bench distance',
  );
  expect(
    [1019, 1020, 1021].map((used) => oneLine(benchDistance({ focalLength: mm(50), closestFocus: mm(1000) }, { wish: 'used', distance: mm(used) }, 'ft'))),
  ).toMatchSnapshot('bench distance 2');
  expect(oneLine(FOCALS.map(usualRange))).toMatchSnapshot('usual range');
});

test('a converter', () => {
  const factors = [1, 1.4, 2] as ConverterFactor[];
  expect(factors.map((factor) => oneLine([apertureWith(factor, fNumber(2.8)), focalLengthWith(factor, mm(300)), convertedError(factor)]))).toMatchSnapshot();
});

test('the sensor, its circle of confusion and its pixels', () => {
  const rules = [{ by: 'diagonal' }, { by: 'traditional' }, { by: 'print' }, { by: 'own', diameter: mm(0.011) }] as const;
  expect(SENSORS.map((sensor) => oneLine([writeSensor(sensor), rules.map((rule) => confusion(sensor, rule)), traditionalConfusion(1.5)]))).toMatchSnapshot(
    'sensors',
  );
  expect(['36x24', '4x3', '3.9x3', '4x2.9', '100x100', '101x24', '36x101', '36', '', '5x4x3', 'axb'].map((text) => oneLine(readSensor(text)))).toMatchSnapshot(
    'x',
  );
  expect(
    [Number.NaN, 499, 499.9, 500, 500.5, 6000, 30_000, 30_000.5, 30_001].map((pixels) => oneLine(pixelPitch(readSensor('36x24'), pixels))),
  ).toMatchSnapshot('pixel pitch');
});

test('what a step is worth, and how wide a band looks', () => {
  expect(
    BLURS.map((blur) => oneLine(WORTHS.flatMap((worth) => [stepAtSensor(blur, worth), ...SIZES.map((m) => stepAtTarget(blur, worth, m))]))),
  ).toMatchSnapshot('step at sensor');
  expect(
    [0.001, 0.1, 1, 10, 1000].map((length) => oneLine(SIZES.map((m) => worthOfStep(mm(length), { aperture: fNumber(2), confusion: mm(0.03) }, m)))),
  ).toMatchSnapshot('worth of step');
  const worths = [0.05, 0.1, 0.125, 0.25, 0.5] as StepWorth[];
  expect([0, 1, 2, 5, 9, 10, 11, 20, 21].map((values) => oneLine(worths.map((worth) => bandWidth(values, worth))))).toMatchSnapshot('band width');
});

test('how square the target must be', () => {
  const tilts = [-12, -1, 0, 0.3, 10, 45].map(degrees);
  expect(BLURS.map((blur) => WORTHS.map((worth) => oneLine(SIZES.map((m) => allowedTilt(blur, worth, mm(2.5), m)))))).toMatchSnapshot('allowed tilt');
  expect(oneLine(SIZES.flatMap((m) => [areaAtTarget(mm(3), m), ...tilts.map((tilt) => edgeDefocus(mm(3), m, tilt))]))).toMatchSnapshot('area at target');
  expect(oneLine([tilts.map((tilt) => depthAcross(tilt, mm(180))), [0, 9.9, 10, 10.1, 11, 20].map((tilt) => eyeIsEnough(degrees(tilt)))])).toMatchSnapshot(
    'depth across',
  );
});

test('the depth placed on purpose, up to a step beyond the scale', () => {
  const field = { front: mm(4), behind: mm(6), total: mm(10) };
  const placed = (onSubject: number, share: number, step = 1) => oneLine(placeDepth(steps(onSubject), share as FrontShare, field, mm(step), USUAL_SCALE));
  expect([0, 0.25, 0.4, 0.5, 0.55, 1].flatMap((share) => [placed(0, share), placed(3, share, 2), placed(-2, share, 0.7)])).toMatchSnapshot('share');
  expect([14, 15, 16, 20].flatMap((value) => [placed(value, 1), placed(-value - 1, 0)])).toMatchSnapshot('value');
  expect(oneLine(placeDepth(steps(0), 0.5 as FrontShare, { front: mm(4), behind: 'infinite', total: 'infinite' }, mm(1), USUAL_SCALE))).toMatchSnapshot(
    'place depth',
  );
});

test('a whole bench', () => {
  const rig: Rig = {
    focalLength: mm(85),
    aperture: fNumber(1.8),
    distance: { from: 'film plane', distance: mm(4250) },
    measured: null,
    sensor: readSensor('36x24'),
    pitch: mm(0.006),
    confusionRule: { by: 'diagonal' },
    area: mm(2.5),
    worth: 0.125 as StepWorth,
  };
  const rigs: readonly Partial<Rig>[] = [
    {},
    { measured: magnification(0.019) },
    { measured: magnification(0.019), distance: { from: 'front of lens', distance: mm(4250) } },
    { distance: { from: 'front of lens', distance: mm(1000) }, aperture: fNumber(8) },
    { focalLength: mm(12), distance: { from: 'film plane', distance: mm(60_000) }, aperture: fNumber(16) },
    { distance: { from: 'film plane', distance: mm(300) } },
  ];
  expect(rigs.map((each) => oneLine(benchOf({ ...rig, ...each })))).toMatchSnapshot();
});

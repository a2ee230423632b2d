// Which steps are walked in which case, with what they say, warn of and read, kept whole; and what a bench takes from outside.
import { expect, test } from 'vitest';
import * as v from 'valibot';
import { lampCautions, SQUARING } from '../../../src/optics/setUp/caution.ts';
import { CAMERA_STEPS } from '../../../src/optics/setUp/cameraSteps.ts';
import { BenchReading, benchFrom, EMPTY_BENCH, latest, withReadings } from '../../../src/optics/setUp/reading.ts';
import { RIG_STEPS } from '../../../src/optics/setUp/rigSteps.ts';
import type { SetUpCase } from '../../../src/optics/setUp/step.ts';
import { holdPicture, pictureOf } from '../../../src/optics/setUp/stepPicture.ts';
import { beginWalk, currentStep, isDone, setUpWalk, walk, type WalkState } from '../../../src/optics/setUp/walk.ts';
import { millimetres as mm, steps } from '../../../src/units.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { plain } from '../setUpCases.ts';

const CASES: readonly Partial<SetUpCase>[] = [
  {},
  { practice: true },
  { version: 'short' },
  { body: { stabiliser: true, liveView: false, rearButton: true, manualAtBody: false } },
  { body: { ...plain.body, stabiliser: true }, lens: { stabiliser: true, zoom: true, heavy: true } },
  { lens: { ...plain.lens, stabiliser: true } },
  { version: 'short', converter: 1.4, lighting: 'warm lamp', squareBy: 'spot' },
  { converter: 2, lighting: 'mains lamp', mains: 60, squareBy: 'sides', focalLength: mm(400), measuredFrom: 'front of lens', unit: 'ft' },
  { lighting: 'steady lamp', start: steps(-7) },
];

test('the steps of each case', () => {
  expect(
    CASES.map((each) =>
      setUpWalk({ ...plain, ...each }).map(({ said, cautions, reads }) => oneLine([said, pictureOf(said), cautions.map(({ is }) => is).join(), reads])),
    ),
  ).toMatchSnapshot('set up walk');
  expect(CASES.map((each) => holdPicture(setUpWalk({ ...plain, ...each }))).join()).toMatchSnapshot('hold picture');
  expect([RIG_STEPS, CAMERA_STEPS].map((rules) => rules.map(({ longOnly }) => Number(longOnly ?? false)).join(''))).toEqual(['000011000', '0000100100']);
  expect(oneLine([SQUARING, lampCautions('daylight', 50), lampCautions('warm lamp', 60)])).toMatchSnapshot('squaring');
});

test('the walk goes on, back and no further, and ticks each step once', () => {
  let state: WalkState = beginWalk({ ...plain, version: 'short' });
  const told: string[] = [];
  const moves = [
    'back',
    'next',
    'repeat',
    'next',
    'back',
    'back',
    'back',
    ...Array.from({ length: 14 }, () => 'next' as const),
    'back',
    'repeat',
    'next',
  ] as const;
  for (const walked of moves) {
    const after = walk(state, { walked });
    state = after.state;
    told.push(
      oneLine([
        walked,
        state.at,
        state.bench.ticked.length,
        isDone(state),
        currentStep(state)?.said.id ?? null,
        after.say === null || after.say === 'done' ? after.say : after.say.id,
      ]),
    );
  }
  expect(told).toMatchSnapshot('told');
  const read = walk(state, { walked: 'read', reading: { reads: 'live view', asked: 'start', sharp: true } });
  expect([read.say, read.state.at === state.at, read.state.bench.readings.length]).toEqual([null, true, 1]);
});

test('a reading that says the same again is not written down twice', () => {
  const reading = (sharp: boolean): BenchReading => ({ reads: 'live view', asked: 'start', sharp });
  const warm: BenchReading = { reads: 'temperature', celsius: 20 };
  const bench = withReadings(withReadings(EMPTY_BENCH, [reading(true), warm]), [reading(true), reading(false)]);
  expect(bench.readings).toEqual([reading(true), warm, reading(false)]);
  expect(withReadings(bench, [reading(true), warm]).readings).toHaveLength(4);
  expect([latest(bench, 'live view'), latest(bench, 'temperature'), latest(bench, 'spot')]).toEqual([reading(false), warm, null]);
});

test('what a stored bench may hold, round the bounds of each reading', () => {
  const sides = { reads: 'sides', left: 1, right: 1, top: 1, bottom: 1, tilt: 0, uncertainty: 1 };
  const fields: readonly (readonly [Readonly<Record<string, unknown>>, string, readonly unknown[]])[] = [
    [{ reads: 'print', drawn: 1, measured: 1 }, 'drawn', [-1, 0, 0.5, 100_000, 100_001]],
    [{ reads: 'print', drawn: 1, measured: 1 }, 'measured', [-1, 0, 0.5, 100_000, 100_001, 'x']],
    [{ reads: 'spot', offset: 1, tilt: 0 }, 'tilt', [-90.5, -90, 90, 90.5]],
    [sides, 'left', [-1, 0, 1e-300, 0.5, 100_000, 100_001]],
    [sides, 'bottom', [0, 100_001]],
    [{ reads: 'temperature' }, 'celsius', [-51, -50.5, -50, 60, 60.5, 61]],
    [{ reads: 'light', iso: 100, aperture: 2, shutter: 1, ev: 5 }, 'ev', [-21, -20.5, -20, 40, 40.5, 41]],
    [{ reads: 'light', iso: 100, aperture: 2, shutter: 1, ev: 5 }, 'aperture', [0.69, 0.7, 1.3, 128, 128.5]],
    [{ reads: 'distance', distance: 1000, from: 'film plane' }, 'distance', [49, 50, 50.5, 500_000, 500_001]],
    [{ reads: 'distance', distance: 1000, from: 'film plane' }, 'from', ['front of lens', 'the wall']],
    [{ reads: 'placement' }, 'share', [-0.1, 0, 0.5, 1, 1.5]],
    [{ reads: 'magnification', length: 1, pixels: 1 }, 'pixels', [0, 1, 100_000, 100_001]],
  ];
  expect(
    fields.map(([reading, field, values]) =>
      oneLine([reading['reads'], field, values.map((value) => Number(v.is(BenchReading, { ...reading, [field]: value })))]),
    ),
  ).toMatchSnapshot();
  const kept = benchFrom({ ticked: ['light', 'a later step'], readings: [{ reads: 'a later one' }, { reads: 'temperature', celsius: 3 }] });
  expect(kept).toEqual({ ticked: ['light'], readings: [{ reads: 'temperature', celsius: 3 }] });
});

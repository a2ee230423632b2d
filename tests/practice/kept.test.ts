// What the practice camera, its lamp and its oddities show over long runs of seeded chance, kept: a share or a limit that changes shows other
// lights somewhere in the run.
import { describe, expect, test } from 'vitest';
import { halfPress, type PracticeCamera } from '../../src/practice/camera.ts';
import { cameraOf, shiftInside } from '../../src/practice/cameras.ts';
import { FOUR_LIGHTS, isLit, litStretches, showingOf, untilNextChange } from '../../src/practice/fourLights.ts';
import { courseOf, lampAt, lampOf, practiceVerdict, untilChange } from '../../src/practice/lamp.ts';
import { drawOddity, holeOf, knockOf, oddPress } from '../../src/practice/oddCamera.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { Oddity } from '../../src/sweep/oddity.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import type { Verdict } from '../../src/sweep/verdict.ts';
import { seconds, steps } from '../../src/units.ts';
import { orThrown } from '../kept/orThrown.ts';
import { sevenDigits } from '../kept/sevenDigits.ts';
import { summed } from '../kept/summed.ts';

const SCALES = [USUAL_SCALE, { min: steps(-10), max: steps(14), step: 2 }, { min: steps(-6), max: steps(2), step: 1 }];
const CAMERA: PracticeCamera = { low: 1.6, high: 7.2, softLow: 0.5, softHigh: 0.3, lateUpTo: 1, darkFrom: 4, lapses: 0.1, arrows: 'right-is-up' };
const upTo = (count: number): number[] => Array.from({ length: count }, (_, index) => index);
/** Light and arrows by their first letters. */
const letters = (verdicts: readonly Verdict[]): string => verdicts.map(({ light, arrows }) => `${light.slice(0, 1)}${arrows.slice(0, 1)}`).join(' ');

test('chance', () => {
  const random = seededRandom(9);
  expect(sevenDigits([upTo(20).map(() => random()), upTo(20).map(() => normal(random, 3, 2))])).toMatchSnapshot('first');
  expect(sevenDigits([-1, 0, 2 ** 32 + 1, 123_456_789].map((seed) => seededRandom(seed)()))).toMatchSnapshot('second');
});

test('half-presses at every value, with arrows either way and without', () => {
  const pressed = (arrows: PracticeCamera['arrows'], more: Partial<PracticeCamera> = {}) => {
    const random = seededRandom(4);
    return letters(upTo(180).map((nth) => halfPress({ ...CAMERA, arrows, ...more }, (nth % 18) - 5, random)));
  };
  expect([pressed('right-is-up'), pressed('right-is-down'), pressed('absent'), pressed('right-is-up', { lapses: 0.9 })]).toMatchSnapshot();
});

test('the cameras of many seeds, on their scale and past its limit', () => {
  const numbers = SCALES.flatMap((scale) =>
    [undefined, 'past the limit' as const].map((band) =>
      summed(
        upTo(400).flatMap((seed) => {
          const { low, high, darkFrom } = cameraOf({ seed, ...(band && { band }) }, scale, 'absent');
          return [low, high, darkFrom, shiftInside({ seed, ...(band && { band }) }, scale, 'absent')];
        }),
      ),
    ),
  );
  expect(sevenDigits(numbers)).toMatchSnapshot('first');
  expect(sevenDigits(upTo(4).map((seed) => cameraOf({ seed }, USUAL_SCALE, 'right-is-down')))).toMatchSnapshot('second');
});

describe('oddities', () => {
  test('as they are drawn, and where they begin', () => {
    expect(upTo(60).map((seed) => `${drawOddity(seed, true).slice(0, 2)}${drawOddity(seed, false).slice(0, 2)}`)).toMatchSnapshot('first');
    expect(upTo(60).map((seed) => Object.values(knockOf(seed)).join(' '))).toMatchSnapshot('second');
    expect(sevenDigits([holeOf(CAMERA), holeOf({ low: 0, high: 9 }), holeOf({ low: 3, high: 4 })])).toMatchSnapshot('third');
  });

  test.each(Oddity.options)('%s', (oddity) => {
    const pressed = (seed: number, arrows: PracticeCamera['arrows'], value: (nth: number) => number) => {
      const random = seededRandom(seed);
      return letters(upTo(120).map((nth) => oddPress({ ...CAMERA, arrows }, oddity, value(nth), nth % 12, seed, random)));
    };
    expect([pressed(1, 'right-is-up', (nth) => (nth % 14) - 3), pressed(2, 'absent', () => 4.4), pressed(4, 'right-is-down', () => 2)]).toMatchSnapshot();
  });

  test('a hole begins past its edges: at them the light is as usual', () => {
    const still = { ...CAMERA, low: 4, high: 6, softLow: 0, softHigh: 0, lapses: 0 };
    const { from, to } = holeOf(still);
    const light = (value: number) => oddPress(still, 'hole in the band', value, 0, 1, () => 0.5).light;
    expect([from, from + 0.01, to - 0.01, to].map(light)).toEqual(['steady', 'flicker', 'flicker', 'steady']);
  });
});

describe('the lamp', () => {
  const moments = (verdict: Verdict, holdTime: number, seed: number) =>
    courseOf(verdict, seconds(holdTime), seededRandom(seed)).map(({ at, lit, arrows }) => `${Number(at.toPrecision(7))} ${lit} ${arrows}`).join(', '); // prettier-ignore

  test('over courses of every light', () => {
    const verdicts = (['steady', 'late', 'flicker', 'dark', 'untold'] as const).flatMap((light) =>
      (['none', 'left', 'right', 'balanced', 'lopsided'] as const).map((arrows): Verdict => ({ light, arrows })),
    );
    expect(verdicts.flatMap((verdict, index) => [3, 0.9, 15].map((holdTime) => moments(verdict, holdTime, index)))).toMatchSnapshot('first');
    expect(upTo(12).map((seed) => moments({ light: 'flicker', arrows: 'left' }, 1.2, seed))).toMatchSnapshot('second');
  });

  test('at a moment and until the next', () => {
    const course = courseOf({ light: 'flicker', arrows: 'left' }, seconds(6), seededRandom(2));
    const times = [-1, ...course.flatMap(({ at }) => [at - 0.01, at, at + 0.01]), 99];
    expect(times.map((time) => `${lampAt(course, seconds(time)).lit} ${String(untilChange(course, seconds(time))?.toPrecision(5))}`)).toMatchSnapshot();
  });

  test('in a sweep on the practice camera, hold by hold', () => {
    const plan = (practice: object | null) =>
      ({ practice, scale: USUAL_SCALE, arrows: 'right-is-up', manner: { holdTime: 5 } }) as unknown as SweepState['plan'];
    const verdicts = (practice: object) => letters(upTo(60).map((nth) => practiceVerdict(plan(practice), steps((nth % 12) - 5), nth) ?? { light: 'untold', arrows: 'none' })); // prettier-ignore
    const odd = { seed: 3, oddity: 'lights everywhere' };
    expect([{ seed: 3 }, { seed: 4 }, { seed: 3, shift: 4 }, { seed: 3, band: 'past the limit' }, odd].map(verdicts)).toMatchSnapshot('first');
    const began = { did: 'began' };
    const lamp = (name: string, practice: object | null, journal: object[]) =>
      orThrown(() => lampOf({ plan: plan(practice), phase: { name, next: { value: 1 } }, journal } as unknown as SweepState));
    const states = ['holding', 'judging', 'dialling'].flatMap((name) => upTo(4).map((holds) => lamp(name, { seed: 8 }, [{ did: 'opened' }, ...upTo(holds).map(() => began)]))); // prettier-ignore
    expect(sevenDigits([...states, lamp('holding', null, [])])).toMatchSnapshot('second');
    expect(practiceVerdict(plan(null), steps(0), 1)).toBeNull();
  });

  test('over the four lights that are shown to a person', () => {
    const courses = FOUR_LIGHTS.map(showingOf);
    const times = [0, 0.4999, 0.5, 0.95, 1.2, 2.9999, 3, 3.2, 3.7999, 3.8, 4.75, 7.6, 9.1].map(seconds);
    expect(courses.map((course) => times.map((time) => Number(isLit(course, time))).join(''))).toMatchSnapshot('first');
    expect(sevenDigits([courses.map(litStretches), times.map((time) => untilNextChange(courses, time))])).toMatchSnapshot('second');
  });
});

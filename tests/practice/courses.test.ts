// Contracts of the practice lamp and of what may be wrong with its camera, with chance that is told: 0.5 unless it is named.
import { describe, expect, test } from 'vitest';
import { halfPress, type PracticeCamera } from '../../src/practice/camera.ts';
import { isLit, litStretches, showingOf, untilNextChange } from '../../src/practice/fourLights.ts';
import { courseOf, lampAt, untilChange } from '../../src/practice/lamp.ts';
import { holeOf, knockOf, oddPress } from '../../src/practice/oddCamera.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import type { Arrows, Light } from '../../src/sweep/verdict.ts';
import { seconds } from '../../src/units.ts';

const always = (value: number) => () => value;
/** One value after the other, then 0.5. */
const inTurn = (...values: number[]) => {
  let at = 0;
  return () => values[at++] ?? 0.5;
};
const course = (light: Light, random = always(0.5), arrows: Arrows = 'none') =>
  courseOf({ light, arrows }, seconds(6), random).map(({ at, lit }) => [Math.round(1000 * at) / 1000, lit]);

describe('a course', () => {
  test('of a late light begins dark: half a second, and up to 0.3 of the hold', () => {
    expect([course('late', always(0)), course('late')]).toEqual([[[0, false], [0.5, true]], [[0, false], [1.4, true]]]); // prettier-ignore
  });

  test('of a flicker has one to three gaps, each in a stretch of its own', () => {
    // Half: two gaps of 3 seconds each; 0.15 + 0.5 (0.45 - 0.15) = 0.3 long, from 0.5 of what is left.
    expect(course('flicker')).toEqual([[0, true], [1.35, false], [1.65, true], [4.35, false], [4.65, true]]); // prettier-ignore
    // The least: one gap of 0.15, from 0.2 of 5.85; the most: three, 0.45 long.
    expect(course('flicker', always(0))).toEqual([[0, true], [1.17, false], [1.32, true]]); // prettier-ignore
    expect(course('flicker', always(0.999999))).toHaveLength(7);
    expect(courseOf({ light: 'flicker', arrows: 'none' }, seconds(0.9), always(0.999999))[2]?.at).toBeCloseTo(0.8 * 0.2 + 0.1, 4);
  });

  test('of a steady light has one moment, of none one that is dark', () => {
    expect([course('steady'), course('dark'), course('untold')]).toEqual([[[0, true]], [[0, false]], [[0, false]]]); // prettier-ignore
  });

  test('shows arrows while it is dark, and beside a steady light', () => {
    const arrows = (light: Light, told: Arrows) => courseOf({ light, arrows: told }, seconds(6), always(0.5)).map((each) => each.arrows);
    expect([arrows('late', 'left'), arrows('flicker', 'right').slice(0, 3), arrows('steady', 'balanced'), arrows('dark', 'lopsided')]).toEqual([
      ['left', 'none'],
      ['none', 'right', 'none'],
      ['both'],
      ['both'],
    ]);
  });

  test('shows from each moment what it says there, and is looked at again at the next', () => {
    const late = courseOf({ light: 'late', arrows: 'none' }, seconds(6), always(0));
    expect([0, 0.49, 0.5, 9].map((at) => lampAt(late, seconds(at)).lit)).toEqual([false, false, true, true]);
    expect([untilChange(late, seconds(0.2)), untilChange(late, seconds(0.5)), untilChange(late, seconds(0))]).toEqual([expect.closeTo(0.3, 9), null, 0.5]);
  });
});

describe('the four lights', () => {
  const late = showingOf('late');
  test('last three seconds, and are then dark for 0.8', () => {
    // A late one is dark for 0.5 + 0.5 times 0.9.
    expect([0, 0.94, 0.96, 2.99, 3, 3.79, 3.8 + 0.94, 3.8 + 0.96].map((at) => isLit(late, seconds(at)))).toEqual([
      false,
      false,
      true,
      true,
      false,
      false,
      false,
      true,
    ]);
    expect(litStretches(late)).toEqual([{ from: expect.closeTo(0.95 / 3, 9), to: 1 }]);
    expect(litStretches(showingOf('flicker'))).toHaveLength(3);
    expect(litStretches(showingOf('dark'))).toEqual([]);
  });

  test('change next at their own moment, at the end of the showing, or when the next begins', () => {
    const next = (at: number) => untilNextChange([late, showingOf('steady')], seconds(at));
    expect([next(0), next(0.95), next(3), next(3.8)]).toEqual([0.95, 2.05, 0.8, 0.95].map((wait) => expect.closeTo(wait, 9)));
  });
});

/** No wavering: the band is 2 to 8, late up to 1 outside it, dark from 3. */
const CAMERA: PracticeCamera = { low: 2, high: 8, softLow: 0, softHigh: 0, lateUpTo: 1, darkFrom: 3, lapses: 0, arrows: 'right-is-up' };
/** Two numbers a normal draw; 0.25 gives a quarter of a turn, whose cosine is 0. */
const STILL = [0.5, 0.25, 0.5, 0.25];

describe('a half-press', () => {
  const pressed = (value: number, camera: Partial<PracticeCamera> = {}, ...random: number[]) =>
    halfPress({ ...CAMERA, ...camera }, value, inTurn(...STILL, ...(random.length > 0 ? random : [0.5, 0.5, 0.25, 0.5, 0.5])));

  test('holds from edge to edge, with both arrows where it has any', () => {
    expect([2, 8].map((value) => pressed(value))).toEqual([
      { light: 'steady', arrows: 'balanced' },
      { light: 'steady', arrows: 'balanced' },
    ]);
    expect([1.9, 8.1].map((value) => pressed(value).light)).toEqual(['late', 'late']);
    expect(pressed(5, { arrows: 'absent' })).toEqual({ light: 'steady', arrows: 'none' });
  });

  test('outside comes late, then flickers, then stays dark, on either side', () => {
    expect([1.1, 0.9, -0.9, -1.1, 8.9, 9.1, 10.9, 11.1].map((value) => pressed(value).light)).toEqual([
      'late',
      'flicker',
      'flicker',
      'dark',
      'late',
      'flicker',
      'flicker',
      'dark',
    ]);
  });

  test('points to the middle of the band, the way it is set', () => {
    expect([0, 10].map((value) => pressed(value).arrows)).toEqual(['right', 'left']);
    expect([0, 10].map((value) => pressed(value, { arrows: 'right-is-down' }).arrows)).toEqual(['left', 'right']);
    expect(pressed(0, { arrows: 'absent' }).arrows).toBe('none');
    // One arrow in twenty points the other way; and one failure in ten shows any light.
    expect(pressed(0, {}, 0.5, 0.5, 0.25, 0.5, 0.96).arrows).toBe('left');
    expect(pressed(0, {}, 0.5, 0.5, 0.25, 0.5, 0.94).arrows).toBe('right');
    expect([pressed(-9, {}, 0.5, 0.5, 0.25, 0.09, 0.1).light, pressed(-9, {}, 0.5, 0.5, 0.25, 0.11, 0.1).light]).toEqual(['late', 'dark']);
  });

  test('that is spoilt holds one time in ten, wherever it is', () => {
    expect([pressed(5, { lapses: 0.3 }, 0.29, 0.11).light, pressed(5, { lapses: 0.3 }, 0.31).light, pressed(-9, { lapses: 0.3 }, 0.29, 0.09).light]).toEqual([
      'late',
      'steady',
      'steady',
    ]);
  });
});

describe('an oddity', () => {
  const odd = (oddity: Parameters<typeof oddPress>[1], value: number, nth = 9, seed = 1, random = always(0.25)) =>
    oddPress(CAMERA, oddity, value, nth, seed, random);

  test('a hole spans 0.35 of the band about its middle, and 1.2 steps at least', () => {
    expect(holeOf(CAMERA)).toEqual({ from: 5 - 1.05, to: 5 + 1.05 });
    expect(holeOf({ low: 4, high: 6 })).toEqual({ from: 4.4, to: 5.6 });
    expect([3.9, 4, 6, 6.1].map((value) => odd('hole in the band', value).light)).toEqual(['steady', 'flicker', 'flicker', 'steady']);
  });

  test('lights flicker, never come, or always come, wherever it is', () => {
    expect([odd('flickers everywhere', 5).light, odd('never lights', 5).light, odd('lights everywhere', 99).light]).toEqual(['flicker', 'dark', 'steady']);
    const light = (oddity: 'flickers everywhere' | 'lights everywhere', share: number) =>
      oddPress(CAMERA, oddity, 5, 9, 1, inTurn(...STILL, 0.5, share, 0.5)).light;
    expect([
      light('flickers everywhere', 0.84),
      light('flickers everywhere', 0.86),
      light('lights everywhere', 0.96),
      light('lights everywhere', 0.98),
    ]).toEqual(['flicker', 'late', 'steady', 'late']);
  });

  test('arrows turn round from the third to the fifth hold on, and stay so', () => {
    for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
      const arrows = Array.from({ length: 9 }, (_, nth) => odd('arrows turn round', 0, nth, seed).arrows);
      const from = arrows.indexOf('left');
      expect(from).toBeGreaterThanOrEqual(3);
      expect(from).toBeLessThanOrEqual(5);
      expect(arrows.slice(0, from).every((arrow) => arrow === 'right') && arrows.slice(from).every((arrow) => arrow === 'left')).toBe(true);
    }
  });

  test('a knocked ring moves the band by four steps from the sixth to the eighth hold on, either way', () => {
    const knocks = Array.from({ length: 40 }, (_, seed) => knockOf(seed));
    expect(new Set(knocks.map(({ from }) => from))).toEqual(new Set([6, 7, 8]));
    expect(new Set(knocks.map(({ by }) => by))).toEqual(new Set([4, -4]));
    const { from, by } = knockOf(1);
    const edge = by > 0 ? 2 : 8;
    expect([odd('focus moves', edge, from - 1).light, odd('focus moves', edge, from).light]).not.toEqual(['steady', 'steady']);
    expect(odd('focus moves', edge, from - 1).light).toBe('steady');
    expect(odd('focus moves', edge + by, from).light).toBe('steady');
  });
});

test('a normal draw has its mean and its deviation', () => {
  expect(normal(inTurn(0, 0.3), 7, 2)).toBe(7);
  // The root of -2 ln(1 - p) is 1 where p = 1 - exp(-1/2); a whole turn, and half of one.
  const one = 1 - Math.exp(-0.5);
  expect([normal(inTurn(one, 0), 7, 2), normal(inTurn(one, 0.5), 7, 2), normal(inTurn(one, 0.25), 7, 2)]).toEqual(
    [9, 5, 7].map((value) => expect.closeTo(value, 9)),
  );
  // Mulberry32, its first numbers from the seed 1, by its published source.
  const random = seededRandom(1);
  expect([random(), random()]).toEqual([expect.closeTo(0.6270739405881613, 12), expect.closeTo(0.002735721180215478, 12)]);
});

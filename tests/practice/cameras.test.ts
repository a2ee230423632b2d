// Contracts of the cameras that are drawn, over many seeds: where their bands lie, and what their pictures show.
import { describe, expect, test } from 'vitest';
import { cameraOf, shiftInside } from '../../src/practice/cameras.ts';
import { focusErrorIn, picturedCamera } from '../../src/practice/pictures/picturedCamera.ts';
import { strokes } from '../../src/practice/pictures/letters.ts';
import { steps } from '../../src/units.ts';

const SCALE = { min: steps(-20), max: steps(20), step: 1 };
const SEEDS = Array.from({ length: 400 }, (_, seed) => seed);
const mean = (list: readonly number[]): number => list.reduce((sum, each) => sum + each, 0) / list.length;
const deviation = (list: readonly number[]): number => Math.sqrt(mean(list.map((each) => (each - mean(list)) ** 2)));

describe('a camera whose band lies on the scale', () => {
  const bands = SEEDS.map((seed) => cameraOf({ seed }, SCALE, 'absent'));
  const centres = bands.map(({ low, high }) => (low + high) / 2);
  const halves = bands.map(({ low, high }) => (high - low) / 2);

  test('has its centre within three fifths of half the scale, spread by 0.3 of it', () => {
    expect(Math.max(...centres.map(Math.abs))).toBeCloseTo(12, 9);
    expect(Math.abs(mean(centres))).toBeLessThan(1);
    // A normal of 6 that is cut at 12 has 5.5.
    expect(deviation(centres)).toBeGreaterThan(5);
    expect(deviation(centres)).toBeLessThan(6);
  });

  test('is half as wide as 0.06 to 0.35 of it, about 0.2', () => {
    expect([Math.min(...halves), Math.max(...halves)]).toEqual([1.2, 7].map((half) => expect.closeTo(half, 9)));
    expect(halves.toSorted((a, b) => a - b)[200]).toBeGreaterThan(3.6);
    expect(halves.toSorted((a, b) => a - b)[200]).toBeLessThan(4.4);
    const dark = bands.map(({ darkFrom }) => darkFrom);
    expect([Math.min(...dark) >= 3, Math.min(...dark) < 3.1, Math.max(...dark) < 8, Math.max(...dark) > 7.9]).toEqual([true, true, true, true]);
  });

  test('is larger by as much on a scale of larger steps', () => {
    const coarse = { min: steps(-40), max: steps(40), step: 2 };
    for (const seed of [1, 2, 3]) {
      const [fine, wide] = [cameraOf({ seed }, SCALE, 'absent'), cameraOf({ seed }, coarse, 'absent')];
      expect([wide.low, wide.high]).toEqual([2 * fine.low, 2 * fine.high].map((edge) => expect.closeTo(edge, 9)));
    }
    const aside = cameraOf({ seed: 5 }, { min: steps(0), max: steps(40), step: 1 }, 'absent');
    expect(aside.low).toBeCloseTo(cameraOf({ seed: 5 }, SCALE, 'absent').low + 20, 9);
  });
});

describe('one whose band runs past a limit', () => {
  const bands = SEEDS.map((seed) => ({ seed, ...cameraOf({ seed, band: 'past the limit' } as never, SCALE, 'absent') }));

  test('has one end past it, the other inside, and its centre on either side, at either limit', () => {
    const outward = bands.map(({ low, high }) =>
      (low + high) / 2 > 0
        ? { out: high - 20, inside: 20 - low, centre: (low + high) / 2 - 20, half: (high - low) / 2 }
        : { out: -20 - low, inside: high + 20, centre: -20 - (low + high) / 2, half: (high - low) / 2 },
    );
    expect(outward.every(({ out, inside }) => out > 0 && inside > 0)).toBe(true);
    expect(outward.every(({ centre, half }) => Math.abs(centre) <= 0.4 * half + 1e-9 && half >= 4 - 1e-9)).toBe(true);
    expect(outward.some(({ centre }) => centre > 1) && outward.some(({ centre }) => centre < -1)).toBe(true);
    const above = bands.filter(({ low, high }) => low + high > 0).length;
    expect(above).toBeGreaterThan(150);
    expect(above).toBeLessThan(250);
  });

  test('is turned inside by whole steps, not always to the middle', () => {
    const shifted = bands.slice(0, 60).map(({ seed, low, high }) => (low + high) / 2 + shiftInside({ seed, band: 'past the limit' } as never, SCALE, 'absent'));
    expect(Math.max(...shifted.map(Math.abs))).toBeLessThanOrEqual(4.5);
    expect(Math.max(...shifted)).toBeGreaterThan(2);
    expect(Math.min(...shifted)).toBeLessThan(-2);
    expect(Number.isInteger(shiftInside({ seed: 3 } as never, SCALE, 'absent'))).toBe(true);
  });
});

describe('its pictures', () => {
  const CAMERA = { centre: 4, step: 3, set: steps(5), scatter: 0.25, nearLessFar: 0.6 };
  /** A whole normal draw of none: a quarter of a turn. */
  const still = () => 0.25;

  test('are focused where the correction puts it, farther from near than from far', () => {
    const error = (at: number, thrown: 'near' | 'far') => focusErrorIn(CAMERA, { by: 'autofocus', at, thrown }, still);
    expect([error(4, 'near'), error(4, 'far'), error(6, 'near'), error(2, 'far')]).toEqual([0.9, -0.9, 6.9, -6.9].map((value) => expect.closeTo(value, 6)));
    expect(focusErrorIn(CAMERA, { by: 'live view' }, still)).toBeCloseTo(0, 9);
  });

  test('are of a body that was set near its centre, with steps of about the usual size', () => {
    const drawn = SEEDS.slice(0, 200).map((seed) => picturedCamera(seed, SCALE));
    const off = drawn.map(({ centre, set }) => set - centre);
    expect(deviation(off)).toBeGreaterThan(1.6);
    expect(deviation(off)).toBeLessThan(2.4);
    const logs = drawn.map(({ step }) => Math.log(step));
    expect(deviation(logs)).toBeGreaterThan(0.12);
    expect(deviation(logs)).toBeLessThan(0.18);
    expect(deviation(drawn.map(({ nearLessFar }) => nearLessFar))).toBeGreaterThan(0.16);
    expect(deviation(drawn.map(({ nearLessFar }) => nearLessFar))).toBeLessThan(0.24);
    const [fine, coarse] = [picturedCamera(3, SCALE), picturedCamera(3, { min: steps(-40), max: steps(40), step: 2 })];
    expect([coarse.scatter, coarse.step, coarse.centre]).toEqual([0.5, fine.step / 2, 2 * fine.centre].map((value) => expect.closeTo(value, 9)));
  });
});

test('letters are three strokes each, placed by their code; blanks are none', () => {
  const written = (text: string, from: 'start' | 'middle' = 'start') => strokes({ kind: 'text', at: { x: 10, y: 20 }, size: 10, text, from });
  expect([written('a b').length, written(' ').length]).toEqual([6, 0]);
  // "a" is 97: 97 mod 4 is 1, mod 7 is 6, mod 5 is 2.
  const [upright, level, other] = written('a').map((box) => [box[0]!.x, box[0]!.y, box[2]!.x, box[2]!.y]);
  expect([upright, level, other]).toEqual(
    [
      [11.3, 13, 12.3, 20],
      [10.5, 13.1, 14.3, 14],
      [10.5, 15.1, 14.3, 16],
    ].map((box) => box.map((value) => expect.closeTo(value, 9))),
  );
  expect(written('aa')[3]![0]!.x - written('aa')[0]![0]!.x).toBeCloseTo(5.5, 9);
  expect(written('aa', 'middle')[0]![0]!.x).toBeCloseTo(11.3 - 5.5, 9);
});

// The loudness at which a stretch of sound begins, ends, or is a syllable, found by halving and kept to seven digits: whatever goes into
// the evidence moves it, however little.
import { describe, expect, test } from 'vitest';
import { Endpoints } from '../../../src/voice/ownWords/endpoints.ts';
import { isSyllable, isTalk, isTone } from '../../../src/voice/ownWords/talk.ts';
import { kept } from '../../kept/kept.ts';
import { runs } from './keptStuff.ts';

/** The least number between two from which it holds, on the scale of their logarithm. */
function least(holds: (value: number) => boolean, low: number, high: number): number {
  let [not, does] = [low, high];
  for (let step = 0; step < 26; step++) {
    const middle = Math.sqrt(not * does);
    if (holds(middle)) does = middle;
    else not = middle;
  }
  return does;
}

/** How often a stretch began and ended. */
function signs(frames: readonly (readonly number[])[]): { began: number; ended: number } {
  const endpoints = new Endpoints();
  const told = frames.flatMap((powers) => endpoints.push(Float32Array.from(powers))?.sign ?? []);
  return { began: told.filter((sign) => sign === 'began').length, ended: told.filter((sign) => sign !== 'began').length };
}
const times = (frame: readonly number[], count: number) => Array.from({ length: count }, () => frame);

describe('the least loudness that opens a stretch', () => {
  const opens = (quiet: readonly number[], loud: (power: number) => readonly number[], warm = 40, count = 7) =>
    least((power) => signs([...times(quiet, warm), ...times(loud(power), count)]).began > 0, 1, 1e5);

  test('in bands alike, and where others fall silent', () => {
    const told = () => [
      opens([1], (power) => [power]),
      opens([1, 1], (power) => [power, power]),
      opens([1, 1], (power) => [power, 0]),
      opens([1, 1, 1], (power) => [power, 1, 0.5]),
      opens([1, 3, 1, 1, 1, 1], (power) => [power, 3, 1.01, 1.02, 1.03, 1.04]),
      ...[26, 30, 60, 61, 62].map((warm) => opens([1, 1], (power) => [power, 1], warm)),
      ...[6, 8, 9, 10, 12].map((count) => opens([1, 1], (power) => [power, 1], 40, count)),
    ];
    expect(kept(told)).toMatchSnapshot();
  });

  test('where one band of many is a thousand times as loud as the noise, and grows', () => {
    const others = Array.from({ length: 2200 }, () => 1);
    const opensBeside = (power: number) => signs([...times([1, 1, ...others], 25), ...Array.from({ length: 6 }, (_, t) => [1e4 * 4 ** t, power * 4 ** t, ...others])]); // prettier-ignore
    expect(kept(() => least((power) => opensBeside(power).began > 0, 1, 1e5))).toMatchSnapshot();
  });

  test('after it swelled for some frames', () => {
    const swells = (by: number) => least((power) => signs([...times([1, 2], 30), ...Array.from({ length: 12 }, (_, t) => [1 + power * by ** t, 2])]).began > 0, 1e-3, 1e4); // prettier-ignore
    expect(kept(() => [0.6, 0.8, 0.9, 1, 1.1, 1.3].map(swells))).toMatchSnapshot();
  });
});

describe('the least loudness that keeps it open', () => {
  const goesOn = (after: (power: number) => readonly (readonly number[])[], loud = 100) =>
    least((power) => signs([...times([1, 1], 30), ...times([loud, loud], 20), ...after(power)]).ended === 0, 0.01, 1e5);

  test('steadily, and by frames in turn', () => {
    const told = () => [
      goesOn((power) => times([power, power], 30)),
      goesOn((power) => times([power, 1], 31)),
      goesOn((power) => times([power, power], 59)),
      goesOn((power) => times([power, power], 60)),
      goesOn((power) => Array.from({ length: 70 }, (_, t) => (t % 5 === 0 ? [power, power] : [1, 1]))),
      goesOn((power) => Array.from({ length: 90 }, (_, t) => (t % 28 === 27 ? [power, power] : [1, 1]))),
    ];
    expect(kept(told)).toMatchSnapshot();
  });

  test('under a peak so loud that the rest is an echo', () => {
    const told = () =>
      [1e3, 1e4, 1e5, 1e6].map((loud) => goesOn((power) => Array.from({ length: 45 }, (_, t) => [(t % 2 === 0 ? 4 : 1) * power, power]), loud));
    expect(kept(told)).toMatchSnapshot();
  });

  test('while it rings on', () => {
    const rings = (by: number, frames: number) => goesOn((power) => Array.from({ length: frames }, (_, t) => [1 + power * by ** t, 1 + power * by ** t]));
    const told = () => [0.9, 0.93, 0.95, 0.97, 0.99].flatMap((by) => [30, 34, 40, 50, 60].map((frames) => rings(by, frames)));
    expect(kept(told)).toMatchSnapshot();
  });
});

describe('the least of what is measured', () => {
  const margin = runs([0, 12]);
  const stretch = (powers: readonly number[], shares: readonly number[], noise = 0) => ({
    frames: [...margin, ...powers, ...margin].map((power) => Float32Array.from(shares, (share) => power * share + noise / 2)),
    noise: Float32Array.from(shares, () => noise),
    begins: 0,
    ends: powers.length + 24,
  });
  const even = Array.from({ length: 20 }, () => 1);
  const waves = (height: number, frames: number, each: number) => Array.from({ length: frames }, (_, t) => height ** (Math.floor(t / each) % 3));

  test('that makes talk and syllables', () => {
    const told = () =>
      [[48, 12], [40, 7], [36, 17]].flatMap(([frames = 0, each = 0]) =>
        [0, 0.1].flatMap((noise) => [
          least((height) => isTalk(stretch(waves(height, frames, each), even, noise)), 1, 3),
          least((height) => isSyllable(stretch(waves(height, frames, each), even, noise)), 1, 3),
          // Pauses far down count as 20 dB.
          least((height) => isTalk(stretch(waves(1.1, frames, each).map((power, t) => (t % 9 === 4 ? power / height ** 9 : power)), even, noise)), 1, 30),
        ]),
      ); // prettier-ignore
    expect(kept(told)).toMatchSnapshot();
  });

  test('that makes a tone, and a voice', () => {
    const wavy = waves(1.9, 36, 6);
    const told = () =>
      [3, 20].flatMap((bands) => [
        least((share) => isTone(stretch(wavy, Array.from({ length: bands }, (_, b) => (b === 1 || b === bands - 1 ? share : 1)), 0.2)), 1, 1e4),
        least((share) => isSyllable(stretch(wavy, Array.from({ length: bands }, (_, b) => (b < 8 ? share : 1)), 0.01)), 1e-4, 1),
        least((share) => isSyllable(stretch(wavy, Array.from({ length: bands }, (_, b) => (b < 7 ? share / 9 : b === 7 ? share : 1)))), 1e-4, 1),
      ]); // prettier-ignore
    expect(kept(told)).toMatchSnapshot();
  });
});

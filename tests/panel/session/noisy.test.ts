// A hundred sweeps of a simulated noisy person by voice alone: words are lost, misheard, late, spoken over a prompt, and
// others talk. Through the real session: its reducer, meaning, matcher and questions; only time, ear and voice are simulated.
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { HOLD_TIME, noisyRun, type NoisyRun } from './noisy/run.ts';

const RUNS = 100;
/** The panel asks 6 s after the end tone, and gives the hold up 6 s after its question, which takes a second to say. */
const WATCHDOG = 6 + 6 + 1.4;

const runs: NoisyRun[] = [];

beforeAll(async () => {
  vi.useFakeTimers();
  for (let seed = 1; seed <= RUNS; seed++) runs.push(await noisyRun(seed));
}, 120_000);
afterAll(() => void vi.useRealTimers());

const sum = (of: (run: NoisyRun) => number): number => runs.reduce((total, run) => total + of(run), 0);

test('the room is as bad as it is meant to be: words are lost, asked back, and taken wrongly', () => {
  expect(sum(({ lost }) => lost)).toBeGreaterThan(3 * RUNS);
  expect(sum(({ asked }) => asked)).toBeGreaterThan(RUNS);
  expect(sum(({ noticed }) => noticed)).toBeGreaterThan(RUNS / 10);
});

test('every sweep comes to its accepted finish', () => {
  expect(runs.flatMap(({ isFinished, log }, index) => (isFinished ? [] : [[index + 1, ...log.slice(-20)]]))).toEqual([]);
});

test('no sweep ends with a wrong verdict that was not read back to its end', () => {
  const unheard = runs.flatMap(({ wrong }, index) => wrong.flatMap((one) => (one.readBack ? [] : [{ seed: index + 1, ...one }])));
  expect(unheard).toEqual([]);
});

test('a person who takes back what is read back wrongly ends with hardly a wrong verdict', () => {
  expect(sum(({ wrong }) => wrong.length) / sum(({ holds }) => holds.length)).toBeLessThan(0.005);
});

test('no hold stalls for longer than its time and the watchdog', () => {
  expect(Math.max(...runs.map(({ longestHold }) => longestHold))).toBeLessThan(HOLD_TIME + WATCHDOG);
});

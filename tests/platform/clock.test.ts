// Contract of the time of day: steady through small corrections, after the system's where that was set anew, and only running
// while a hold is under way.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepSteady, now } from '../../src/platform/clock.ts';

const HOUR = 3_600_000;
const NOON = new Date(2026, 5, 1, 12).getTime();

beforeEach(() => {
  vi.useFakeTimers({ now: NOON });
  now();
});
afterEach(() => {
  keepSteady(false);
  vi.useRealTimers();
});

const setClock = (by: number): void => void vi.setSystemTime(Date.now() + by);

test('a correction of less than a second moves nothing', () => {
  setClock(-800);
  expect(now()).toBe(NOON);
  vi.advanceTimersByTime(5000);
  expect(now()).toBe(NOON + 5000);
});

test.each([HOUR, -HOUR])('a clock set by %d milliseconds is followed', (by) => {
  setClock(by);
  expect(now()).toBe(NOON + by);
});

test.each([HOUR, -HOUR])('a clock set by %d milliseconds in a hold is followed only when the hold is over', (by) => {
  const began = now();
  keepSteady(true);
  vi.advanceTimersByTime(2000);
  setClock(by);
  vi.advanceTimersByTime(3000);
  expect(now() - began).toBe(5000);
  keepSteady(false);
  expect(now()).toBe(NOON + 5000 + by);
});

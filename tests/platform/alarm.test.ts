// Contract of the alarms: never early, told how late, one of each kind.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createAlarms } from '../../src/platform/alarm.ts';
import { now } from '../../src/platform/clock.ts';
import { moment } from '../../src/units.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const within = (ms: number) => moment(now() + ms);

test('an alarm rings when it is due and not a moment before', () => {
  const ring = vi.fn<(late: number) => void>();
  createAlarms().set('hold time', within(5000), ring);
  vi.advanceTimersByTime(4999);
  expect(ring).not.toHaveBeenCalled();
  vi.advanceTimersByTime(10);
  expect(ring).toHaveBeenCalledOnce();
  expect(ring.mock.calls[0]?.[0]).toBeLessThan(0.02);
});

test('an alarm of the same kind takes the place of the one before; another kind does not', () => {
  const alarms = createAlarms();
  const rung: string[] = [];
  alarms.set('answer', within(1000), () => rung.push('first'));
  alarms.set('answer', within(2000), () => rung.push('second'));
  alarms.set('dial', within(1500), () => rung.push('dial'));
  vi.advanceTimersByTime(3000);
  expect(rung).toEqual(['dial', 'second']);
});

test('what was cleared does not ring', () => {
  const alarms = createAlarms();
  const ring = vi.fn<() => void>();
  alarms.set('hold time', within(1000), ring);
  alarms.clear();
  vi.advanceTimersByTime(5000);
  expect(ring).not.toHaveBeenCalled();
});

test('an alarm that was due in the past rings at once, and tells how late the system clock says it is', () => {
  const alarms = createAlarms();
  const ring = vi.fn<(late: number) => void>();
  alarms.set('hold time', within(5000), ring);
  // The computer sleeps for half an hour: timers stand still, the system clock does not.
  vi.setSystemTime(Date.now() + 1_800_000);
  vi.advanceTimersByTime(5010);
  expect(ring.mock.calls[0]?.[0]).toBeGreaterThan(1700);
});

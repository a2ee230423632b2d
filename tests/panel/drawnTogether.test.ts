// Contract of what is drawn together: the first change at once, what comes soon after it in one drawing, and the last one always.
import { effect } from '@preact/signals';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { drawnTogether } from '../../src/panel/photographs/drawnTogether.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function watched() {
  const together = drawnTogether(0);
  const drawings: number[] = [];
  effect(() => void drawings.push(together.drawn.value));
  return { together, drawings };
}

test('of a thousand changes within a second about ten are drawn: the first at once, and the last', () => {
  const { together, drawings } = watched();
  together.put(1, 'soon');
  expect(drawings).toEqual([0, 1]);
  for (let change = 2; change <= 1000; change += 1) {
    vi.advanceTimersByTime(1);
    together.put(change, 'soon');
  }
  vi.advanceTimersByTime(1000);
  expect(drawings.length).toBeLessThanOrEqual(13);
  expect(drawings.at(-1)).toBe(1000);
});

test('what is to be drawn at once is, whatever was drawn just before, and what stands is known before it is drawn', () => {
  const { together, drawings } = watched();
  together.put(1, 'soon');
  together.put(2, 'soon');
  expect([together.standing(), ...drawings]).toEqual([2, 0, 1]);
  together.put(3, 'at once');
  expect(drawings).toEqual([0, 1, 3]);
});

test('after a while without changes the next one is drawn at once', () => {
  const { together, drawings } = watched();
  together.put(1, 'soon');
  vi.advanceTimersByTime(500);
  together.put(2, 'soon');
  expect(drawings).toEqual([0, 1, 2]);
});

// Contract of the history's drawing: everything lies on the chart, the drift with it, and the ruler below has a mark for each month.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { historiesOf, type History } from '../../src/logbook/history.ts';
import { plotOf } from '../../src/panel/logbook/historyPlot.ts';
import { monthsBetween } from '../../src/panel/logbook/months.ts';
import { isoOf, readIso } from '../../src/calendar.ts';
import { DAY, libraryWith, sweepRecord, T0 } from '../logbook/libraryWith.ts';

const historyOf = (sweeps: readonly { day: number; low: number; high: number }[]): History =>
  historiesOf(libraryWith({ records: sweeps.map(({ day, low, high }, index) => sweepRecord(`r${index}`, T0 + day * DAY, low, high)) })).get('s')!;

const numbersIn = (path: string): number[] => path.match(/-?\d+(\.\d+)?(e-?\d+)?/g)?.map(Number) ?? [];

const histories = fc
  .uniqueArray(fc.record({ day: fc.integer({ min: 0, max: 2000 }), low: fc.integer({ min: -20, max: 16 }), wide: fc.integer({ min: 0, max: 9 }) }), {
    selector: ({ day }) => day,
    minLength: 2,
    maxLength: 12,
  })
  .map((sweeps) => historyOf(sweeps.map(({ day, low, wide }) => ({ day, low, high: Math.min(20, low + wide) }))));

describe('the plot of a history', () => {
  test('no point, interval, line or doubt of the drift lies outside it', () => {
    fc.assert(
      fc.property(histories, fc.integer({ min: 140, max: 340 }), (history, width) => {
        const plot = plotOf(history, width)!;
        const points = [...(plot.trend ? [...pairs(plot.trend.path), ...pairs(plot.trend.doubt)] : []), ...plot.measured.map(({ x, y }) => [x, y] as const)];
        for (const [x, y] of points) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(width);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(plot.height);
        }
        for (const x of plot.months) expect(x).toBeLessThanOrEqual(width);
      }),
    );
  });

  test('four sweeps over months have a drift, and then no line from dot to dot', () => {
    const sweeps = [0, 100, 200, 300].map((day) => ({ day, low: -2 + day / 100, high: 4 + day / 100 }));
    expect(plotOf(historyOf(sweeps), 336)).toMatchObject({ drift: '', trend: { count: 4, moved: { value: expect.closeTo(3, 6) } } });
    const few = plotOf(historyOf(sweeps.slice(1)), 336)!;
    expect(few.trend).toBeNull();
    expect(numbersIn(few.drift)).toHaveLength(6);
  });
});

describe('the months of a ruler', () => {
  const between = (from: string, to: string, room: number) => monthsBetween(readIso(from)!, readIso(to)!, room).map((at) => isoOf(at, 'day'));

  test('each first day of a month that lies between has a mark', () => {
    expect(between('2025-11-20', '2026-02-01', 300)).toEqual(['2025-12-01', '2026-01-01', '2026-02-01']);
    expect(between('2026-03-02', '2026-03-30', 300)).toEqual([]);
  });

  test('where months would crowd, years have one', () => {
    expect(between('2014-05-06', '2026-02-01', 200).at(0)).toBe('2015-01-01');
    expect(between('2014-05-06', '2026-02-01', 200)).toHaveLength(12);
  });
});

const pairs = (path: string): (readonly [number, number])[] => {
  const all = numbersIn(path);
  return all.flatMap((x, index) => (index % 2 === 0 ? [[x, all[index + 1]!] as const] : []));
};

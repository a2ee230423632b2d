// Contract of the drawing of a belief that narrows: a row for each stop, in order and never touching, on the scale, in line with the strip.
import { describe, expect, test } from 'vitest';
import { narrowingOf, stopsOf, type FilmStop } from '../../src/panel/logbook/narrowing.ts';
import { layOut } from '../../src/panel/strip/geometry.ts';
import { stagesOf } from '../../src/sweep/replayed.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { steps } from '../../src/units.ts';
import { inPhase, later } from '../sweep/staged.ts';

const stop = (from: number, to: number, value: number | null = null): FilmStop => ({
  interval: { from, to },
  hold: value === null ? null : { value: steps(value), counts: 'out' },
});

describe('the narrowing', () => {
  test.each([1, 8, 40, 90])('of %i stops, rows lie below each other inside the drawing', (count) => {
    const { height, rows } = narrowingOf(
      Array.from({ length: count }, () => stop(-3, 4, 2)),
      USUAL_SCALE,
      336,
    );
    expect(rows).toHaveLength(count);
    rows.forEach(({ y }, index) => expect(y - (rows[index - 1]?.y ?? 0)).toBeGreaterThanOrEqual(index === 0 ? 2.5 : 5));
    expect(rows.at(-1)!.y).toBeLessThan(height);
  });

  test('a range that runs past the scale ends with it, and a hold lies at its value as on the strip', () => {
    const [row] = narrowingOf([stop(-26, 26, 7)], USUAL_SCALE, 300).rows;
    const matter = { scale: USUAL_SCALE, holds: [], profile: [{ at: 0, chance: 1 }], interval: { from: -26, to: 26 }, band: null, current: steps(7) };
    expect(row!.hold!.x).toBeCloseTo(layOut(matter, 300, true).cursor!.x, 6);
    expect(row!.left).toBeGreaterThanOrEqual(0);
    expect(row!.right).toBeLessThanOrEqual(300);
  });

  test('of a whole sweep, the last range is the narrowest of the lot, and each hold has its mark', () => {
    const stages = stagesOf([...inPhase('offered').journal, { did: 'finished', at: later(900), by: 'key' }]);
    const stops = stopsOf(stages);
    const widths = stops.map(({ interval }) => interval.to - interval.from);
    expect(widths.at(-1)).toBe(Math.min(...widths));
    expect(stops.filter(({ hold }) => hold)).toHaveLength(stages.filter(({ is }) => is === 'held').length);
  });
});

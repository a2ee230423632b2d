// Contract of settling an edge: how far it may lean, how long it must be, how much room it needs, each at its limit.
import { describe, expect, test } from 'vitest';
import { settleEdge } from '../../src/photographs/settledEdge.ts';
import { renderEdge, type SlantedEdge } from './slantedEdge.ts';

const settled = (given: Partial<SlantedEdge>) => {
  const { plane, place } = renderEdge(given);
  return settleEdge(plane, place);
};
const fault = (given: Partial<SlantedEdge>) => {
  const found = settled(given);
  return found.ok ? null : found.fault.is;
};

describe('an edge', () => {
  test('is found to a hundredth of a pixel and a tenth of a degree, upright or level, either way', () => {
    for (const [runs, angle] of [
      ['upright', 5],
      ['upright', -7],
      ['level', 5],
      ['level', -7],
    ] as const) {
      // prettier-ignore
      const found = settled({ runs, angle, offset: 0.3 });
      expect(found).toMatchObject({ ok: true, value: { angle: expect.closeTo(angle, 1), course: { runs } } });
      const line = found.ok ? found.value.line : { at: NaN, lean: NaN };
      expect(line.at + line.lean * 100).toBeCloseTo(80.3, 1);
      expect(found.ok && found.value.scatter).toBeLessThan(0.02);
    }
  });

  test('is found to a twentieth of a pixel in noise of a tenth of its contrast', () => {
    // A row tells it to 0.17 of a pixel at best, and so a hundred of them to 0.017.
    const missed = [3, -7, 12].map((angle) => {
      const found = settled({ angle, rows: 100, noise: 0.05, offset: 0.3 });
      return found.ok ? found.value.line.at + found.value.line.lean * 50 - 80.3 : NaN;
    });
    for (const each of missed) expect(Math.abs(each)).toBeLessThan(0.05);
  });

  test('leans by 2 to 15 degrees', () => {
    expect([1.9, 2.1, 14.9, 15.1, -1.9, -2.1, -14.9, -15.1].map((angle) => fault({ angle }))).toEqual([
      'edge not slanted',
      null,
      null,
      'edge not slanted',
      'edge not slanted',
      null,
      null,
      'edge not slanted',
    ]);
  });

  test('has twenty rows, and enough to cross a pixel', () => {
    expect(settled({ rows: 19, angle: 8 })).toEqual({ ok: false, fault: { is: 'edge too short', rows: 19, needed: 20 } });
    expect(fault({ rows: 24, angle: 8 })).toBeNull();
    // At 2.1 degrees a pixel takes 28 rows.
    expect(settled({ rows: 27, angle: 2.1 })).toMatchObject({ fault: { is: 'edge too short', needed: 28 } });
  });

  test('is read by whole pixels that it crosses', () => {
    const rows = (given: Partial<SlantedEdge>) => {
      const found = settled(given);
      return found.ok ? found.value.rows.length : 0;
    };
    // 200 rows at 5 degrees cross 17.5 pixels: 17 of 11.43.
    expect(rows({ angle: 5 })).toBe(194);
    expect(rows({ angle: 10, rows: 100 })).toBe(96);
  });

  test('has eight pixels of room on both sides', () => {
    expect(fault({ across: 40, angle: 3, rows: 100 })).toBeNull();
    expect(fault({ across: 20, angle: 3, rows: 100 })).toBe('edge outside');
    const found = settled({ across: 60, angle: 3, rows: 100 });
    // 30 less 0.3 and half of 99 rows at 3 degrees, 2.6; a whole number less one.
    expect(found.ok && found.value.room).toBe(26);
    expect(settled({ across: 300, rows: 300 })).toMatchObject({ value: { room: 64 } });
    expect(settled({ across: 300, rows: 60 })).toMatchObject({ value: { room: 30 } });
  });

  test('is none where most of its rows show none', () => {
    const { plane, place } = renderEdge({});
    const hidden = (share: number) => {
      const light = plane.light.map((value, at) => (Math.floor(at / plane.width) < share * 200 ? 0.3 : value));
      const found = settleEdge({ ...plane, light }, place);
      return found.ok ? null : found.fault.is;
    };
    expect([hidden(0.25), hidden(0.35), hidden(1)]).toEqual([null, 'no edge', 'no edge']);
  });
});

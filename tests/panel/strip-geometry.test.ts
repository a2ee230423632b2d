// Contract of the strip's drawing: nothing overhangs, marks never touch and stay big enough to tell apart, and what
// matters is always in sight.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOut, type StripMatter } from '../../src/panel/strip/geometry.ts';
import type { Box, DrawnMark, MarkedHold } from '../../src/panel/strip/marks.ts';
import { windowOf } from '../../src/panel/strip/window.ts';
import { USUAL_SCALE, valuesOf, type Scale } from '../../src/sweep/scale.ts';
import { steps } from '../../src/units.ts';

const scales = fc.constantFrom<Scale>(
  USUAL_SCALE,
  { min: steps(-10), max: steps(10), step: 1 },
  { min: steps(-40), max: steps(40), step: 5 },
  { min: steps(-100), max: steps(100), step: 2 },
  { min: steps(0), max: steps(9), step: 1 },
);

const matters = scales.chain((scale) => {
  const value = fc.constantFrom(...valuesOf(scale));
  const hold: fc.Arbitrary<MarkedHold> = fc.record({
    value,
    light: fc.constantFrom('steady', 'late', 'flicker', 'dark', 'untold'),
    arrows: fc.constantFrom('none', 'left', 'right', 'balanced', 'lopsided'),
    counts: fc.constantFrom('in', 'out'),
  });
  return fc
    .record({ holds: fc.array(hold, { maxLength: 24 }), current: fc.option(value), middle: value, spread: fc.double({ min: 0.3, max: 9, noNaN: true }) })
    .map(({ holds, current, middle, spread }): StripMatter => ({ scale, holds, current, band: null, ...belief(scale, middle, spread) }));
});
const widths = fc.integer({ min: 216, max: 340 });

function belief(scale: Scale, middle: number, spread: number): Pick<StripMatter, 'profile' | 'interval'> {
  const grid = valuesOf(scale).flatMap((value) => [value, value + scale.step / 2]);
  const weights = grid.map((at) => Math.exp(-0.5 * ((at - middle) / (spread * scale.step)) ** 2));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return {
    profile: grid.map((at, index) => ({ at, chance: (weights[index] ?? 0) / sum })),
    interval: { from: Math.max(scale.min, middle - 2 * spread), to: Math.min(scale.max, middle + 2 * spread) },
  };
}

const boxesOf = ({ box, triangles }: DrawnMark): Box[] => [box, ...triangles.map((triangle) => triangle.box)];
const halfText = (text: string): number => text.length * 3.6;

describe('the strip', () => {
  test('no label, mark, cursor or hill reaches past its sides', () => {
    fc.assert(
      fc.property(matters, widths, (matter, width) => {
        const strip = layOut(matter, width);
        const labels = [...strip.labels, ...(strip.cursor ? [strip.cursor] : []), ...(strip.locator?.ends ?? [])];
        for (const { x, text } of labels) {
          expect(x - halfText(text)).toBeGreaterThanOrEqual(0);
          expect(x + halfText(text)).toBeLessThanOrEqual(width);
        }
        for (const { x, width: wide } of strip.marks.flatMap(boxesOf)) {
          expect(x).toBeGreaterThanOrEqual(-0.01);
          expect(x + wide).toBeLessThanOrEqual(width + 0.01);
        }
        for (const [, x] of strip.hill.matchAll(/[ML]([\d.-]+)/g)) {
          expect(Number(x)).toBeGreaterThanOrEqual(0);
          expect(Number(x)).toBeLessThanOrEqual(width);
        }
      }),
    );
  });

  test('labels do not touch one another', () => {
    fc.assert(
      fc.property(matters, widths, (matter, width) => {
        const strip = layOut(matter, width);
        const labels = [...strip.labels, ...(strip.cursor ? [strip.cursor] : [])].sort((a, b) => a.x - b.x);
        labels.slice(1).forEach((label, index) => {
          const before = labels[index] ?? label;
          expect(label.x - before.x).toBeGreaterThanOrEqual(halfText(label.text) + halfText(before.text));
        });
      }),
    );
  });

  test('marks are at least 8 px wide, and neither they nor their arrows overlap', () => {
    fc.assert(
      fc.property(matters, widths, (matter, width) => {
        const { marks } = layOut(matter, width);
        for (const { box } of marks) expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(8);
        const boxes = marks.flatMap(boxesOf);
        boxes.forEach((one, index) => {
          for (const other of boxes.slice(index + 1)) {
            const beside = one.x + one.width <= other.x + 0.01 || other.x + other.width <= one.x + 0.01;
            const beneath = one.y + one.height <= other.y + 0.01 || other.y + other.height <= one.y + 0.01;
            expect(beside || beneath).toBe(true);
          }
        });
      }),
    );
  });

  test('holds of one value are stacked under it in the order they were made', () => {
    const hold = (light: MarkedHold['light']): MarkedHold => ({ value: steps(3), light, arrows: 'none', counts: 'out' });
    const { marks } = layOut({ scale: USUAL_SCALE, holds: [hold('late'), hold('dark')], current: null, band: null, ...belief(USUAL_SCALE, 0, 8) }, 216);
    expect(marks.map(({ light }) => light)).toEqual(['late', 'dark']);
    expect(marks[1]?.box.x).toBe(marks[0]?.box.x);
    expect(marks[1]?.box.y).toBeGreaterThan(marks[0]?.box.y ?? Infinity);
  });

  test('the current value is always in sight', () => {
    fc.assert(
      fc.property(matters, widths, (matter, width) => {
        expect(layOut(matter, width).cursor === null).toBe(matter.current === null);
      }),
    );
  });

  test('every hold is in the strip or, outside its window, on the locator', () => {
    fc.assert(
      fc.property(matters, widths, (matter, width) => {
        const { marks, locator, window } = layOut(matter, width);
        const inside = matter.holds.filter(({ value }) => value >= window.from && value <= window.to);
        expect(marks).toHaveLength(inside.length);
        expect(locator === null).toBe(window.whole);
        expect(locator?.holds.length ?? inside.length).toBeGreaterThanOrEqual(new Set(matter.holds.map(({ value }) => value)).size);
      }),
    );
  });
});

describe('the window', () => {
  const open = { holds: [], current: steps(0) };

  test('is the whole scale while the centre may lie anywhere', () => {
    expect(windowOf(USUAL_SCALE, { ...open, interval: { from: -15, to: 15 } })).toEqual({ from: -20, to: 20, whole: true });
  });

  test('is a quarter of the usual scale when the centre is known to a few steps', () => {
    const { from, to, whole } = windowOf(USUAL_SCALE, { ...open, current: steps(5), interval: { from: 4, to: 7 } });
    expect({ from, to, whole }).toEqual({ from: 0, to: 10, whole: false });
  });

  test('keeps the failing neighbours of the band in sight, and lets the far ones go', () => {
    const holds = (
      [
        ['out', -18],
        ['out', 1],
        ['in', 5],
        ['in', 8],
        ['out', 10],
        ['out', 19],
      ] as const
    ).map(([counts, value]) => ({ counts, value: steps(value) }));
    const { from, to } = windowOf(USUAL_SCALE, { holds, current: steps(9), interval: { from: 5, to: 7 } });
    expect(from).toBeLessThanOrEqual(0);
    expect(from).toBeGreaterThan(-18);
    expect(to).toBeGreaterThanOrEqual(11);
  });

  test('a short scale is always shown whole', () => {
    const short: Scale = { min: steps(-5), max: steps(5), step: 1 };
    expect(windowOf(short, { ...open, interval: { from: 0, to: 1 } }).whole).toBe(true);
  });

  test('starts and ends on values of the scale', () => {
    fc.assert(
      fc.property(matters, (matter) => {
        const values = valuesOf(matter.scale);
        const { from, to } = windowOf(matter.scale, matter);
        expect(values).toContain(from);
        expect(values).toContain(to);
      }),
    );
  });
});

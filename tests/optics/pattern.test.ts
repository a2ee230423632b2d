// The pattern cannot be mistaken for itself shifted: first the row of bars, then what line detectors see of the whole
// field.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Shape } from '../../src/optics/print/drawing.ts';
import { mosaic } from '../../src/optics/print/mosaic.ts';
import { autocorrelation, BAR_COUNTS, barSequence, laneEdges, type BarCount } from '../../src/optics/print/sequence.ts';
import { millimetres as mm } from '../../src/units.ts';

describe.each(BAR_COUNTS)('the row of %i bars', (count) => {
  const bars = barSequence(count);

  it('is a maximum-length sequence: round a circle its autocorrelation is one peak, and -1 everywhere else', () => {
    for (let shift = 1; shift < count; shift++) {
      let sum = 0;
      for (let index = 0; index < count; index++) sum += bars[index] === bars[(index + shift) % count] ? 1 : -1;
      expect(sum).toBe(-1);
    }
  });

  it('printed once, its worst side peak is under a seventh of the one peak', () => {
    const side = Array.from({ length: count - 1 }, (_, index) => Math.abs(autocorrelation(bars, index + 1)));
    expect(autocorrelation(bars, 0)).toBe(count);
    expect(Math.max(...side)).toBeLessThan(count / 7);
  });

  it('is as much black as white, but for one bar', () => {
    expect(bars.filter(Boolean)).toHaveLength((count + 1) / 2);
  });

  it('its lanes are a Golomb ruler: no distance between two edges comes twice', () => {
    const edges = laneEdges(count);
    const distances = edges.flatMap((edge, index) => edges.slice(index + 1).map((later) => later - edge));
    expect(new Set(distances).size).toBe(distances.length);
    expect(edges.at(-1)).toBe(count);
  });
});

/** Darkness of the field as a grid, several samples to a bar. */
const SAMPLES = 4;
function raster(count: BarCount): number[][] {
  const size = count * SAMPLES;
  const grid = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  const dark = mosaic(count, mm(SAMPLES), 0, 0).filter((shape: Shape) => shape.kind === 'rectangle');
  for (const { at, width, height } of dark) {
    for (let y = at.y; y < at.y + height; y++) grid[y]!.fill(1, at.x, at.x + width);
  }
  return grid;
}

/** What a line detector across the field sees: each sample is averaged over the detector's width. */
function across(grid: number[][], middle: number, width: number): number[] {
  const from = Math.round(middle - width / 2);
  const rows = grid.slice(from, from + width);
  return grid[0]!.map((_, x) => rows.reduce((sum, row) => sum + row[x]!, 0) / rows.length);
}

const transposed = (grid: number[][]): number[][] => grid[0]!.map((_, x) => grid.map((row) => row[x]!));

/** Likeness of two stretches, 1 when the same up to brightness and contrast. */
function likeness(a: number[], b: number[]): number {
  const mean = (of: number[]) => of.reduce((sum, next) => sum + next, 0) / of.length;
  const [ma, mb] = [mean(a), mean(b)];
  let [ab, aa, bb] = [0, 0, 0];
  for (const [index, of] of a.entries()) {
    ab += (of - ma) * (b[index]! - mb);
    aa += (of - ma) ** 2;
    bb += (b[index]! - mb) ** 2;
  }
  return ab / Math.sqrt(aa * bb);
}

/** The best likeness of the middle two thirds with the field shifted by more than three bars. */
function falseLock(line: number[]): number {
  const length = Math.round((line.length * 2) / 3);
  const start = Math.round((line.length - length) / 2);
  const view = line.slice(start, start + length);
  let worst = -1;
  for (let from = 0; from + length <= line.length; from++) {
    if (Math.abs(from - start) > 3 * SAMPLES) worst = Math.max(worst, likeness(view, line.slice(from, from + length)));
  }
  return worst;
}

it('evenly spaced bars, for comparison, look the same one period on', () => {
  expect(falseLock(Array.from({ length: 63 * SAMPLES }, (_, at) => Math.floor(at / SAMPLES) % 2))).toBeCloseTo(1, 9);
});

describe.each(BAR_COUNTS)('line detectors over the field of %i bars', (count) => {
  const grid = raster(count);
  const spread = (line: number[]) => {
    const mean = line.reduce((sum, next) => sum + next, 0) / line.length;
    return Math.sqrt(line.reduce((sum, next) => sum + (next - mean) ** 2, 0) / line.length);
  };
  const lines = fc.record({
    // A detector lies somewhere in the middle half of the field, and is one to seven bars wide.
    middle: fc.double({ min: 0.25, max: 0.75, noNaN: true }),
    bars: fc.double({ min: 1, max: 7, noNaN: true }),
    turned: fc.boolean(),
  });
  const seenBy = ({ middle, bars, turned }: { middle: number; bars: number; turned: boolean }) =>
    across(turned ? transposed(grid) : grid, middle * count * SAMPLES, Math.round(bars * SAMPLES));

  it('level and upright ones find strong detail wherever they lie', () => {
    fc.assert(
      fc.property(lines, (line) => {
        expect(spread(seenBy(line))).toBeGreaterThan(0.2);
      }),
    );
  });

  it('none finds a second place that looks the same', () => {
    fc.assert(
      fc.property(lines, (line) => {
        expect(falseLock(seenBy(line))).toBeLessThan(0.5);
      }),
      { numRuns: 40 },
    );
  });
});

// Contracts of the parts of which an edge's figure is made, each on pixels that are made by hand: where they are cut, where the edge lies in
// them, how its light rises, how far its blur reaches, what its levels tell.
import { describe, expect, test } from 'vitest';
import { edgeExtent } from '../../src/photographs/edgeExtent.ts';
import { fitEdge } from '../../src/photographs/edgeLine.ts';
import { edgeShape } from '../../src/photographs/edgeShape.ts';
import { edgeSpread, meanOf, phaseOf, type EdgeSpread } from '../../src/photographs/edgeSpread.ts';
import { cutStrip, edgeCourse, roomBeside, type EdgeStrip } from '../../src/photographs/edgeStrip.ts';
import { normalBelow } from '../../src/photographs/normalCurve.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import { roughEdge } from '../../src/photographs/roughEdge.ts';

const filled = (count: number, value: number): number[] => Array.from({ length: count }, () => value);
const painted = (width: number, height: number, light: (x: number, y: number) => number): Plane => ({
  width,
  height,
  light: Float32Array.from({ length: width * height }, (_, at) => light(at % width, Math.floor(at / width))),
});

describe('the strip', () => {
  const plane = painted(40, 30, (x, y) => x + 100 * y);
  const upright = edgeCourse({ from: { x: 10, y: 2.5 }, to: { x: 12, y: 22.5 } }, plane);

  test('runs from end to end, whichever is named first, upright or level', () => {
    const wanted = { first: 2, end: 23, line: { at: expect.closeTo(9.75, 9), lean: expect.closeTo(0.1, 9) } };
    expect(upright).toEqual({ runs: 'upright', ...wanted });
    expect(edgeCourse({ from: { x: 12, y: 22.5 }, to: { x: 10, y: 2.5 } }, plane)).toEqual({ runs: 'upright', ...wanted });
    expect(edgeCourse({ from: { x: 2.5, y: 10 }, to: { x: 22.5, y: 12 } }, plane)).toEqual({ runs: 'level', ...wanted });
  });

  test('ends with the picture, and counts rows whose middle lies between the ends', () => {
    expect(edgeCourse({ from: { x: 5, y: -9 }, to: { x: 5, y: 99 } }, plane)).toMatchObject({ first: -0, end: 30, line: { at: 5, lean: 0 } });
    expect(edgeCourse({ from: { x: -9, y: 5 }, to: { x: 99, y: 5 } }, plane)).toMatchObject({ first: -0, end: 40 });
    expect(edgeCourse({ from: { x: 5, y: 2.6 }, to: { x: 5, y: 8.4 } }, plane)).toMatchObject({ first: 3, end: 8 });
    expect(edgeCourse({ from: { x: 3, y: 3 }, to: { x: 9, y: 9 } }, plane).runs).toBe('upright');
    expect(edgeCourse({ from: { x: 3, y: 3 }, to: { x: 3, y: 3 } }, plane).line).toEqual({ at: 3, lean: 0 });
  });

  test('has the room of the row that lies nearest to a border, less a pixel', () => {
    // Its rows lie at 10 to 12 of 40, then at 30.25 to 32.25.
    expect(roomBeside(plane, upright, upright.line)).toBe(9);
    expect(roomBeside(plane, upright, { at: 30, lean: 0.1 })).toBe(6);
    expect(roomBeside(plane, { ...upright, runs: 'level' }, { at: 20, lean: -0.1 })).toBe(9);
  });

  test('has as many pixels on the one side as on the other, row by row', () => {
    const strip = cutStrip(plane, { ...upright, first: 2, end: 4 }, upright.line, 3);
    expect(strip).toMatchObject({ rows: 2, across: 6, reach: 3 });
    expect([...strip.start]).toEqual([-2.5, -2.6].map((start) => expect.closeTo(start, 9)));
    expect([...strip.light]).toEqual([207, 208, 209, 210, 211, 212, 307, 308, 309, 310, 311, 312]);
    const level = cutStrip(plane, { ...upright, runs: 'level', first: 2, end: 4 }, upright.line, 3);
    expect([...level.light]).toEqual([702, 802, 902, 1002, 1102, 1202, 703, 803, 903, 1003, 1103, 1203]);
  });
});

/** Rows whose edge is a hard step by so much, so far from the line: in such a row the place is exact. */
function steps(rows: readonly { readonly off: number; readonly by?: number }[], reach = 4): EdgeStrip {
  const across = 2 * reach;
  return {
    rows: rows.length,
    across,
    reach,
    start: Float64Array.from(rows, ({ off }) => 0.5 - reach + off),
    light: Float64Array.from(rows.flatMap(({ by = 1 }) => [...filled(reach, 0), ...filled(reach, by)])),
  };
}

describe('the line', () => {
  const leaning = (row: number): number => 0.1 + 0.02 * (row - 10);
  const rows = Array.from({ length: 21 }, (_, row) => ({ off: leaning(row) }));
  const line = { at: expect.closeTo(0.1, 9), lean: expect.closeTo(0.02, 9) };
  const all = Array.from({ length: 21 }, (_, row) => row);
  const changed = (row: number, to: { off?: number; by?: number }) => steps(rows.map((each, at) => (at === row ? { ...each, ...to } : each)));

  test('goes through the places of all rows, rising or falling', () => {
    expect(fitEdge(steps(rows))).toEqual({ shift: line, kept: all, scatter: expect.closeTo(0, 9) });
    expect(fitEdge(steps(rows.map((each) => ({ ...each, by: -1 }))))).toMatchObject({ shift: line, kept: all });
  });

  test('leaves out a row that lies off it, and one that shows less than half the step', () => {
    const without = all.filter((row) => row !== 4);
    expect(fitEdge(changed(4, { off: leaning(4) + 0.4 }))).toMatchObject({ shift: line, kept: without });
    expect(fitEdge(changed(4, { off: leaning(4) - 0.3 }))).toMatchObject({ shift: line, kept: without });
    expect(fitEdge(changed(4, { by: 0.49 }))).toMatchObject({ shift: line, kept: without });
    expect(fitEdge(changed(4, { by: 0.5 }))).toMatchObject({ shift: line, kept: all });
    expect(fitEdge(changed(4, { by: -1 }))).toMatchObject({ kept: without });
  });

  test('keeps a row that is off by less than 0.15 pixels, and says how rows scatter', () => {
    const near = fitEdge(changed(10, { off: 0.1 + 0.12 }));
    expect(near?.kept).toEqual(all);
    // 0.12 less the 0.12 / 21 by which the line moves up, over the root of 21.
    expect(near?.scatter).toBeCloseTo(Math.sqrt((0.12 ** 2 * (1 - 1 / 21)) / 21), 6);
    const scattered = fitEdge(steps(rows.map(({ off }, row) => ({ off: off + (row % 2 === 0 ? 0.05 : -0.05) }))));
    expect(scattered?.scatter).toBeCloseTo(0.05, 3);
  });

  test('needs two rows with a step', () => {
    expect(fitEdge(steps([{ off: 0.1 }]))).toBeNull();
    expect(fitEdge(steps([{ off: 0.1 }, { off: 0.2 }]))).toMatchObject({ shift: { at: expect.closeTo(0.15, 9), lean: expect.closeTo(0.1, 9) } });
    expect(fitEdge(steps(rows.map((each) => ({ ...each, by: 0 }))))).toBeNull();
  });
});

describe('the spread', () => {
  /** Rows that begin so many bins behind the strip's beginning, and their pixels. */
  const strip = (...rows: readonly { readonly place: number; readonly light: readonly number[] }[]): EdgeStrip => ({
    rows: rows.length,
    across: 4,
    reach: 2,
    start: Float64Array.from(rows, ({ place }) => place / 4 - 2),
    light: Float64Array.from(rows.flatMap(({ light }) => light)),
  });
  /** Light that rises by one a bin. */
  const rising = (place: number) => ({ place, light: [0, 4, 8, 12].map((at) => at + place) });

  test('is made of rows that meet every fourth bin', () => {
    const rows = strip(...[0.5, 1.5, 2.5, 3.5].map(rising));
    expect([0, 1, 2, 3].map((row) => phaseOf(rows, row))).toEqual([0, 1, 2, 3]);
    const spread = edgeSpread(rows, [0, 1, 2, 3]);
    expect([...(spread?.light ?? [])]).toEqual(Array.from({ length: 16 }, (_, bin) => bin + 0.5));
    expect(spread).toMatchObject({ counts: [1, 1, 1, 1], apart: 0, noise: 0 });
    expect(phaseOf(strip(rising(4)), 0)).toBe(3);
  });

  test('is none where a phase has no row', () => {
    expect(edgeSpread(strip(...[0.5, 1.5, 2.5, 3.5].map(rising)), [0, 1, 2])).toBeNull();
  });

  test('is moved to the middle of each bin where its rows lie off it, but for the outermost', () => {
    const spread = edgeSpread(strip(...[0.75, 1.75, 2.75, 3.75].map(rising)), [0, 1, 2, 3]);
    expect([...(spread?.light ?? [])]).toEqual([0.75, ...Array.from({ length: 14 }, (_, bin) => expect.closeTo(bin + 1.5, 9)), 15.75]);
    expect(spread?.apart).toBeCloseTo(0, 9);
  });

  test('says how far its pixels lie apart in a bin, and their noise', () => {
    const rows = [0.25, 0.75, 1.25, 1.75, 2.25, 2.75, 3.25, 3.75].map((place, at) => ({ place, light: filled(4, 5 + (at % 2 === 0 ? 0.3 : -0.3)) }));
    const spread = edgeSpread(strip(...rows), [0, 1, 2, 3, 4, 5, 6, 7]);
    expect(spread?.apart).toBeCloseTo(0.0625, 9);
    // Two pixels a bin, 0.3 to either side: a variance of 0.18.
    expect(spread?.noise).toBeCloseTo(Math.sqrt(0.18), 9);
    expect(spread?.counts).toEqual([2, 2, 2, 2]);
  });

  test('has means of runs that are cut at the ends', () => {
    const light = Float64Array.of(1, 2, 6);
    expect([meanOf(light, 0, 2), meanOf(light, -5, 1), meanOf(light, 1, 9)]).toEqual([1.5, 1, 4]);
  });
});

const spreadOf = (light: readonly number[], more: Partial<EdgeSpread> = {}): EdgeSpread => ({
  light: Float64Array.from(light),
  counts: [2, 2, 2, 2],
  apart: 0,
  noise: 0,
  ...more,
});

describe('the extent', () => {
  const REACH = 12;
  /** Steps at so many bins from the middle, each by so much. */
  const withSteps = (...at: readonly (readonly [bin: number, by: number])[]) =>
    Array.from({ length: 8 * REACH }, (_, bin) => at.reduce((sum, [from, by]) => sum + (bin >= 4 * REACH + from ? by : 0), 0));

  test('of a hard step is the pixel over which it is smoothed, and all is clear', () => {
    expect(edgeExtent(spreadOf(withSteps([0, 1])), REACH)).toEqual({ lobe: 1, clear: REACH, beside: false });
    expect(edgeExtent(spreadOf(withSteps([0, -1])), REACH)).toEqual({ lobe: 1, clear: REACH, beside: false });
  });

  test('is on the wider side where the step lies off the middle', () => {
    expect(edgeExtent(spreadOf(withSteps([3, 1])), REACH)).toMatchObject({ lobe: 1.75 });
    expect(edgeExtent(spreadOf(withSteps([-3, 1])), REACH)).toMatchObject({ lobe: 1.75 });
  });

  test('tells the nearest other thing on either side, as far as its own slope reaches', () => {
    // Half the step, six pixels off: its slope passes 0.15 two bins before it. A pixel is taken off for the smoothing.
    expect(edgeExtent(spreadOf(withSteps([0, 1], [24, 0.5])), REACH)).toEqual({ lobe: 1, clear: 4.5, beside: true });
    expect(edgeExtent(spreadOf(withSteps([0, 1], [-24, -0.5])), REACH)).toEqual({ lobe: 1, clear: 4.5, beside: true });
    expect(edgeExtent(spreadOf(withSteps([0, 1], [24, 0.5], [-28, 0.5])), REACH)).toMatchObject({ clear: 4.5 });
    expect(edgeExtent(spreadOf(withSteps([0, 1], [24, 0.15])), REACH)).toMatchObject({ beside: false });
    expect(edgeExtent(spreadOf(withSteps([0, 1], [24, 0.16])), REACH)).toMatchObject({ beside: true });
  });

  test('skips one and a half lobes and two pixels, 14 bins, for the halo of sharpening', () => {
    expect(edgeExtent(spreadOf(withSteps([0, 1], [16, 0.5])), REACH)).toMatchObject({ clear: 15 / 4 - 1, beside: true });
    expect(edgeExtent(spreadOf(withSteps([0, 1], [12, -0.5])), REACH)).toMatchObject({ beside: false });
    expect(edgeExtent(spreadOf(withSteps([0, 1], [13, -0.5])), REACH)).toMatchObject({ clear: 15 / 4 - 1, beside: true });
  });

  test('is looked for in the middle third alone', () => {
    expect(edgeExtent(spreadOf(withSteps([0, 1], [30, 3])), REACH)).toMatchObject({ lobe: 1, beside: true });
    expect(edgeExtent(spreadOf(withSteps([0, 1], [16, 3])), REACH)).toMatchObject({ lobe: 5 });
  });

  test('is smoothed as the noise asks for, as far as the strip allows', () => {
    // Of 8 rows: 0.1 times the root of 2 / 8 is 0.05, over two pixels 0.035; 0.04 is borne.
    expect(edgeExtent(spreadOf(withSteps([0, 1]), { noise: 0.1 }), REACH)).toEqual({ lobe: 2, clear: REACH, beside: false });
    expect(edgeExtent(spreadOf(withSteps([0, 1]), { noise: 0.079 }), REACH)).toMatchObject({ lobe: 1 });
    expect(edgeExtent(spreadOf(withSteps([0, 1]), { noise: 0.081 }), REACH)).toMatchObject({ lobe: 2 });
    expect(edgeExtent(spreadOf(withSteps([0, 1]), { noise: 0.2 }), REACH)).toBeNull();
  });

  test('is none where no slope stands out, or where it does not end', () => {
    expect(edgeExtent(spreadOf(filled(96, 0.5), { noise: 1e-9 }), REACH)).toBeNull();
    expect(edgeExtent(spreadOf(Array.from({ length: 96 }, (_, bin) => bin / 96)), REACH)).toBeNull();
  });
});

describe('the levels', () => {
  const strip = (light: readonly number[]): EdgeStrip => ({
    rows: 1,
    across: light.length,
    reach: light.length / 2,
    start: Float64Array.of(0),
    light: Float64Array.from(light),
  });
  const plain = strip(filled(40, 0.5));
  const levels = (dark: number, bright: number, more: Partial<EdgeSpread> = {}) => spreadOf([...filled(8, dark), ...filled(8, bright)], more);
  const shape = (spread: EdgeSpread, rows = 16) => edgeShape(plain, spread, filled(rows, 0));

  test('stand out by a fifth of both and three times the noise', () => {
    expect(shape(levels(0.25, 0.375)).stands).toBe(true);
    expect(shape(levels(0.375, 0.25)).stands).toBe(true);
    expect(shape(levels(0.25, 0.374)).stands).toBe(false);
    expect(shape(levels(0, 0.75, { noise: 0.25 })).stands).toBe(false);
    expect(shape(levels(0, 0.75, { noise: 0.24 })).stands).toBe(true);
  });

  test('go past their own by what chance does not explain, up or down', () => {
    const light = (dark: number, bright: number) => [...filled(6, 0.1), dark, dark, bright, bright, ...filled(6, 0.8)];
    expect(shape(spreadOf(light(0.1, 0.8))).overshoot).toBe(0);
    expect(shape(spreadOf(light(0.1, 0.87))).overshoot).toBeCloseTo(0.1, 9);
    expect(shape(spreadOf(light(-0.04, 0.8))).overshoot).toBeCloseTo(0.2, 9);
    // One bin alone counts half, as two are taken together.
    expect(shape(spreadOf([...filled(8, 0.1), ...filled(3, 0.8), 0.94, ...filled(4, 0.8)])).overshoot).toBeCloseTo(0.1, 9);
    // Of 16 rows, four a phase, two bins: 2.5 times 0.02 over the root of 8.
    expect(shape(spreadOf(light(0.1, 0.87), { noise: 0.02 })).overshoot).toBeCloseTo((0.07 - 0.0176777) / 0.7, 6);
  });

  test('are blown where more than a tenth of a side’s outer half stands at the end', () => {
    const ends = (white: number, black: number, at: number): EdgeStrip =>
      strip(
        filled(40, 0.5).map((usual, pixel) => (pixel >= at && pixel < at + white ? 0.991 : pixel >= at + white && pixel < at + white + black ? 0.0004 : usual)),
      );
    const blown = (white: number, black: number, at: number) => edgeShape(ends(white, black, at), levels(0.1, 0.8), [0]);
    expect([blown(1, 0, 0), blown(2, 0, 0), blown(0, 1, 0), blown(0, 2, 0)].map((each) => each.blown)).toEqual([null, 'white', null, 'black']);
    // The outer quarters end before the eleventh pixel and begin with the 31st.
    expect([blown(2, 0, 8).blown, blown(2, 0, 9).blown, blown(2, 0, 30).blown, blown(2, 0, 29).blown]).toEqual(['white', null, 'white', null]);
    expect(blown(6, 3, 15)).toMatchObject({ blown: null, clipped: 9 / 40 });
    expect(blown(2, 2, 0).clipped).toBe(0.1);
    expect(edgeShape(strip(filled(40, 0.9909)), levels(0.1, 0.8), [0]).clipped).toBe(0);
    expect(edgeShape(strip(filled(40, 0.00041)), levels(0.1, 0.8), [0]).clipped).toBe(0);
  });
});

describe('where an edge lies before it is known to a pixel', () => {
  const course = { runs: 'upright', first: 2, end: 22, line: { at: 27, lean: 0 } } as const;
  const found = (...at: readonly (readonly [x: number, by: number])[]) =>
    roughEdge(
      painted(60, 24, (x) => at.reduce((sum, [from, by]) => sum + (x >= from ? by : 0), 0)),
      course,
      20,
    );

  test('the steepest rise is found, and the rows beside it that its place is read from', () => {
    expect(found([30, 1])).toEqual({ ok: true, value: { line: { at: 30, lean: 0 }, reach: 8 } });
    expect(found([24, -1])).toEqual({ ok: true, value: { line: { at: 24, lean: 0 }, reach: 8 } });
    expect(found()).toEqual({ ok: false, fault: { is: 'no edge' } });
  });

  test('a softer one is read from more', () => {
    // Spread by 3 pixels, and by the two over which it is read: a tenth of its slope is left 6.6 pixels off, so that it ends at seven; four more
    // are taken.
    const soft = roughEdge(
      painted(60, 24, (x) => normalBelow((x + 0.5 - 27) / 3)),
      course,
      20,
    );
    expect(soft).toMatchObject({ ok: true, value: { line: { at: 27 }, reach: 11 } });
  });

  test('another edge nearer than six pixels is told', () => {
    expect(found([27, 1], [33, 0.5])).toMatchObject({ ok: true, value: { reach: 4 } });
    expect(found([27, 1], [32, 0.5])).toEqual({ ok: false, fault: { is: 'two edges', apart: 5 } });
    expect(found([27, 1], [21, -0.5])).toMatchObject({ ok: true, value: { reach: 4 } });
    expect(found([27, 1], [37, 0.5])).toMatchObject({ ok: true, value: { reach: 8 } });
    expect(found([27, 1], [35, 0.5])).toMatchObject({ ok: true, value: { reach: 6 } });
  });

  test('what rises by less than 0.4 of it is no other edge', () => {
    expect(found([27, 1], [32, 0.39])).toMatchObject({ ok: true, value: { reach: 8 } });
  });
});

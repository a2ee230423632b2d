// Numbers of a slanted edge, from its pixels to its figure, kept so that no change of them goes unnoticed.
import { expect, test } from 'vitest';
import { measureEdge } from '../../src/photographs/edge.ts';
import { edgeExtent } from '../../src/photographs/edgeExtent.ts';
import { fitEdge } from '../../src/photographs/edgeLine.ts';
import { edgeShape } from '../../src/photographs/edgeShape.ts';
import { edgeSpread, meanOf, phaseOf } from '../../src/photographs/edgeSpread.ts';
import { acrossAt, cutStrip, edgeCourse, roomBeside } from '../../src/photographs/edgeStrip.ts';
import { binningCorrection, binWidth, edgeContrast, transferWeights } from '../../src/photographs/edgeTransfer.ts';
import { edgeWindow } from '../../src/photographs/edgeWindow.ts';
import { relativeDeviation } from '../../src/photographs/rowBootstrap.ts';
import { roughEdge } from '../../src/photographs/roughEdge.ts';
import { settleEdge } from '../../src/photographs/settledEdge.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { kept } from '../kept/kept.ts';
import { summed } from '../kept/summed.ts';
import { renderEdge, type SlantedEdge } from './slantedEdge.ts';

/** Small ones: upright and level, soft and hard, clean and grainy, bright on either side, some with another edge beside. */
const EDGES: readonly (Partial<SlantedEdge> & { readonly beside?: number })[] = [
  { sigma: 0.5, angle: 5 },
  { sigma: 1, angle: -4, noise: 0.01, runs: 'level' },
  { sigma: 2, angle: 9, levels: [0.7, 0.1], noise: 0.03 },
  { sigma: 4, angle: 12, levels: [0.2, 0.5], runs: 'level' },
  { sigma: 0.8, angle: 14.5, noise: 0.05, levels: [0.3, 0.5] },
  { sigma: 1.5, angle: 3, levels: [-0.02, 0.5], noise: 0.002 },
  { sigma: 1.2, angle: -7, levels: [0.3, 1.02], noise: 0.01 },
  { sigma: 1, angle: 6, beside: 14 },
  { sigma: 1, angle: 6, beside: 7 },
  { sigma: 2, angle: 5, beside: 10, noise: 0.01 },
  { sigma: 7, angle: 8, noise: 0.04 },
  { sigma: 0.3, angle: 11.3, rows: 40 },
];
const rendered = EDGES.map(({ beside, ...edge }) => {
  const size = { rows: 60, across: 64, ...edge };
  const { plane, place } = renderEdge(size);
  if (beside === undefined) return { plane, place };
  const bar = renderEdge({ ...size, noise: 0, levels: [0, 0.5], offset: beside }).plane.light;
  return { plane: { ...plane, light: plane.light.map((one, at) => one - bar[at]!) }, place };
});
const flat = (value: unknown): unknown => (ArrayBuffer.isView(value) ? summed(value as Float64Array) : value);

test('where an edge runs, and the strips cut along it', () => {
  const told = () =>
    rendered.slice(0, 4).flatMap(({ plane, place }) =>
      [[0, 0, 0, 0], [3.4, -9, 2, 5], [-20, 7.5, 4, -6.5], [0, 8, 0, 7.5]].map(([left = 0, top = 0, right = 0, bottom = 0]) => {
        const course = edgeCourse({ from: { x: place.from.x + left, y: place.from.y + top }, to: { x: place.to.x + right, y: place.to.y + bottom } }, plane);
        const room = roomBeside(plane, course, course.line);
        const strip = cutStrip(plane, course, course.line, Math.max(2, Math.min(9, room)));
        return [course.runs, course.first, course.end, ...Object.values(course.line), room, acrossAt(course.line, 7), strip.rows, strip.across, summed(strip.start), summed(strip.light.map((one) => one || 0))];
      }),
    ); // prettier-ignore
  const point = { x: 4, y: 9 };
  expect(
    kept(() => [
      told(),
      Object.values(edgeCourse({ from: point, to: point }, rendered[0]!.plane)),
      edgeCourse({ from: point, to: { x: 9, y: 14 } }, rendered[0]!.plane).runs,
    ]),
  ).toMatchSnapshot();
});

test('edges before they are known to a pixel', () => {
  const told = () =>
    rendered.map(({ plane, place }) => {
      const course = edgeCourse(place, plane);
      return [8, 9, 16, 21].flatMap((reach) => [-6, -2.5, 0, 3, 7].map((off) => {
        const rough = roughEdge(plane, { ...course, line: { ...course.line, at: course.line.at + off } }, reach);
        return rough.ok ? rough.value.line.at + 100 * rough.value.reach : -('apart' in rough.fault ? rough.fault.apart : 1);
      }));
    }); // prettier-ignore
  const blank = { width: 64, height: 40, light: new Float32Array(64 * 40).fill(0.3) };
  expect(kept(told)).toMatchSnapshot();
  expect(roughEdge(blank, edgeCourse({ from: { x: 30, y: 0 }, to: { x: 32, y: 40 } }, blank), 9)).toEqual({ ok: false, fault: { is: 'no edge' } });
});

test('the line through the rows of an edge, some of which show another thing', () => {
  const told = () =>
    rendered.flatMap(({ plane, place }, at) => [4, 8, 12].map((reach) => {
      const course = edgeCourse(place, plane);
      const strip = cutStrip(plane, course, { ...course.line, at: course.line.at + 0.7 * (at % 3) }, reach);
      const light = strip.light.map((one, pixel) => (Math.floor(pixel / strip.across) % 13 === at % 5 ? 0.3 + one * (0.1 * (at % 9)) : one));
      const fit = fitEdge({ ...strip, light });
      return fit && [...Object.values(fit.shift), fit.scatter, summed(fit.kept), fit.kept.length];
    })); // prettier-ignore
  const { plane, place } = rendered[0]!;
  const course = edgeCourse(place, plane);
  const short = [1, 2, 3].map((rows) => fitEdge(cutStrip(plane, { ...course, end: course.first + rows }, course.line, 6))?.scatter);
  const dark = fitEdge({ rows: 4, across: 8, reach: 4, start: new Float64Array(4).fill(-3.6), light: new Float64Array(32) });
  expect(kept(() => [told(), short, dark])).toMatchSnapshot();
});

test('how the light rises over an edge, how far its blur reaches, and what its levels tell', () => {
  const told = () =>
    rendered.map(({ plane, place }, at) => {
      const course = edgeCourse(place, plane);
      return [8, 13, 20].map((reach) => {
        const strip = cutStrip(plane, course, course.line, reach);
        const rows = Array.from({ length: strip.rows - (at % 4) }, (_, row) => row);
        const spread = edgeSpread(strip, rows);
        if (spread === null) return null;
        const extent = edgeExtent(spread, reach);
        const shape = edgeShape(strip, spread, rows);
        return [[summed(spread.light), ...spread.counts, spread.apart, spread.noise, summed(rows.map((row) => phaseOf(strip, row))), ...(extent ? [extent.lobe, extent.clear] : [])], extent?.beside, Object.values(shape)];
      });
    }); // prettier-ignore
  const light = Float64Array.from({ length: 12 }, (_, bin) => bin * bin);
  expect(kept(() => [told(), [-3, 0, 4].map((from) => [2, 5, 20].map((end) => meanOf(light, from, end)))])).toMatchSnapshot();
});

test('shares of white and black at their bounds, and steps at theirs', () => {
  const strip = { rows: 4, across: 16, reach: 8, start: new Float64Array(4), light: new Float64Array(64).fill(0.5) };
  const told = () =>
    [0.9905, 0.991, 0.9915, 0.0003, 0.0004, 0.0005].map((end) =>
      [0, 1, 2, 3, 4].map((count) => {
        const pixels = strip.light.map((one, at) => (at % 16 === 15 && at / 16 < count ? end : at % 16 === [3, 4, 11, 12][count % 4] && at < 16 ? end : one));
        const step = Float64Array.from({ length: 64 }, (_, bin) => (bin < 32 ? 0.2 : 0.3) + (bin % 9 === count ? 0.1 : 0));
        return Object.values(edgeShape({ ...strip, light: pixels }, { light: step, counts: [1, 1, 1, 1], apart: 1 / 12, noise: 0.01 * count }, [0, 1, 2, 3]));
      }),
    ); // prettier-ignore
  // A step of a fifth of both sides' light is enough, three times the noise is not.
  const stands = (low: number, high: number, noise: number) =>
    edgeShape(
      strip,
      { light: Float64Array.from({ length: 64 }, (_, bin) => (bin < 32 ? low : high)), counts: [1, 1, 1, 1], apart: 1 / 12, noise },
      [0, 1, 2, 3],
    ).stands;
  expect([stands(2, 3, 0), stands(2.01, 3, 0), stands(1, 4, 1), stands(1, 4, 0.99)]).toEqual([true, false, false, true]);
  // A tenth of one side's outer half: here 1.6 pixels of 16.
  const all = { ...strip, rows: 5, light: new Float64Array(80).fill(0.5) };
  const blown = (count: number, light: number) =>
    edgeShape(
      { ...all, light: all.light.map((one, at) => (at % 16 === 0 && at / 16 < count ? light : one)) },
      { light: new Float64Array(64).fill(0.4), counts: [1, 1, 1, 1], apart: 0, noise: 0 },
      [0, 1, 2, 3, 4],
    ).blown;
  expect([1, 2, 3].map((count) => [blown(count, 1), blown(count, 0)])).toEqual([[null, null], [null, null], ['white', 'black']]); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('windows, transforms and what corrects them', () => {
  const told = () => {
    const windows = [[4, 1], [8, 5], [8, 0], [6, 5.9]].map(([reach = 1, flat = 0]) => edgeWindow(reach, flat)); // prettier-ignore
    const weights = windows
      .slice(0, 2)
      .flatMap((window) => [0.05, 0.4].flatMap((frequency) => Object.values(transferWeights(window, frequency, 0.1)).map(flat)));
    return [windows[0], windows.map(flat), weights, [0, 0.1, 0.7].map((f) => [binningCorrection(f, 0.2, 0.08), binningCorrection(f, 0, 0.02)]), binWidth(0.3)];
  };
  const contrast = () =>
    rendered.slice(0, 5).map(({ plane, place }) => {
      const course = edgeCourse(place, plane);
      const strip = cutStrip(plane, course, course.line, 9);
      const rows = Array.from({ length: strip.rows }, (_, row) => row);
      const [spread, window] = [edgeSpread(strip, rows)!, edgeWindow(9, 4)];
      const read = { strip, rows, window, lean: course.line.lean, apart: spread.apart };
      return [
        ...[0, 0.07, 0.3].map(edgeContrast(spread, window, 0.1)),
        ...[0.05, 0.2, 0.5].map((half) => relativeDeviation({ ...read, half }, seededRandom(7))),
      ];
    });
  expect(kept(() => [told(), contrast()])).toMatchSnapshot();
});

test('edges settled and measured, or why not', () => {
  const more: Partial<SlantedEdge>[] = [{ rows: 19 }, { rows: 20, angle: 10 }, { rows: 28, angle: 2.1 }, { angle: 1.98 }, { angle: 2.05, rows: 64 }, { angle: 14.9 }, { angle: 15.1 }, { sigma: 0.05, angle: 9 }, { sigma: 12 }, { levels: [0.3, 0.42] }, { levels: [0.3, 0.3] }]; // prettier-ignore
  const all = [...rendered, ...more.map((edge) => renderEdge({ rows: 60, across: 64, ...edge }))];
  const told = () =>
    all.map(({ plane, place }) => [
      [0, 5, -9, 23.5].map((off) => { const settled = settleEdge(plane, { from: { ...place.from, x: place.from.x + off }, to: place.to }); return settled.ok ? [...Object.values(settled.value.line), settled.value.angle, settled.value.rows.length, settled.value.scatter, settled.value.room] : Object.values(settled.fault); }),
      [measureEdge(plane, place, seededRandom(3))].map((one) => (one.ok ? Object.values(one.value).flatMap((each) => (typeof each === 'object' ? Object.values(each) : each)) : Object.values(one.fault))),
    ]); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

// Edges that are settled by a hair, or are not: too short, too near to the border, partly covered, beside another; and what is measured then.
import { expect, test } from 'vitest';
import { measureEdge } from '../../src/photographs/edge.ts';
import { edgeSpread } from '../../src/photographs/edgeSpread.ts';
import { cutStrip, edgeCourse } from '../../src/photographs/edgeStrip.ts';
import { edgeContrast } from '../../src/photographs/edgeTransfer.ts';
import { edgeWindow } from '../../src/photographs/edgeWindow.ts';
import { halfContrast } from '../../src/photographs/halfContrast.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import { relativeDeviation } from '../../src/photographs/rowBootstrap.ts';
import { READ_BESIDE, settleEdge } from '../../src/photographs/settledEdge.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { kept } from '../kept/kept.ts';
import { renderEdge, type SlantedEdge } from './slantedEdge.ts';

type Place = Parameters<typeof settleEdge>[1];
const settled = (plane: Plane, place: Place): unknown => {
  const told = settleEdge(plane, place);
  return told.ok ? [told.value.line.at, told.value.line.lean, told.value.rows.length, told.value.scatter, told.value.room] : Object.values(told.fault);
};
const measured = (plane: Plane, place: Place): unknown => {
  const told = measureEdge(plane, place, seededRandom(5));
  if (!told.ok) return Object.values(told.fault);
  const { mtf50, interval, overshoot, rows, clipped } = told.value;
  return [mtf50, interval.low, interval.high, Number(overshoot.toFixed(7)), rows, clipped];
};
const edge = (given: Partial<SlantedEdge>) => renderEdge({ rows: 60, across: 64, ...given });
const moved = ({ from, to }: Place, x: number): Place => ({ from: { x: from.x + x, y: from.y }, to: { x: to.x + x, y: to.y } });

test('so much beside an edge may be read', () => expect(READ_BESIDE).toBe(100));

test('edges of about twenty rows, of none, and outside the picture', () => {
  const { plane, place } = edge({ angle: 11.35, rows: 40 });
  const part = (from: number, to: number): Place => {
    const at = (y: number) => ({ x: place.from.x + ((place.to.x - place.from.x) * y) / 40, y });
    return { from: at(from), to: at(to) };
  };
  const told = () => [19, 20, 21, 22, 24, 25, 26, 10, 12, 0, -8].map((rows) => settled(plane, part(8, 8 + rows)));
  const outside = [-30, 50].map((y) => settled(plane, { from: { x: 30, y }, to: { x: 31, y: y + 25 } }));
  expect(kept(() => [told(), outside])).toMatchSnapshot();
  expect(settleEdge(plane, part(8, 28)).ok).toBe(true);
  expect(settled(plane, { from: { x: Number.NaN, y: 3 }, to: { x: 9, y: 40 } })).toEqual(['edge too short', 0, 20]);
  expect(settled(plane, { from: { x: 30, y: -30 }, to: { x: 31, y: -5 } })).toEqual(['edge too short', 0, 20]);
  expect(settled(plane, part(8, 8))).toEqual(['edge too short', 0, 20]);
});

test('edges near to the border, told where they are and beside', () => {
  const told = () => Array.from({ length: 16 }, (_, more) => edge({ across: 16 + more, angle: 4 })).map(({ plane, place }) => [0, 1, -1, 4].map((off) => settled(plane, moved(place, off)))); // prettier-ignore
  const aside = () => [8, 10, 12, 14, 15, 16].map((offset) => edge({ across: 60, angle: -4, offset })).map(({ plane, place }) => [0, -3, -6, -9, -12].map((off) => settled(plane, moved(place, off)))); // prettier-ignore
  expect(kept(() => [told(), aside()])).toMatchSnapshot();
});

test('an edge is looked beside for 64 pixels and no more', () => {
  const told = () => [{ across: 150, rows: 150 }, { across: 150, rows: 127 }, { across: 160, rows: 131, runs: 'level' as const }].map((size) => edge({ ...size, sigma: 3 })).map(({ plane, place }) => settled(plane, place)); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('edges of which other things cover some rows', () => {
  const { plane, place } = edge({ angle: 9 });
  const covered = (rows: number, by: (at: number) => number): Plane => ({
    ...plane,
    light: plane.light.map((one, at) => (Math.floor(at / 64) < rows ? by(at) : one)),
  });
  const told = () =>
    [0, 9, 16, 17, 18, 19, 20, 24, 29, 33].map((rows) => [
      settled(covered(rows, () => 0.3), place),
      settled(covered(rows, (at) => (at % 64 < 39 ? 0.1 : 0.6)), place),
      measured(covered(rows, (at) => (at % 64 < 33 + (rows % 5) ? 0.05 : 0.6)), place),
    ]); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
  // Seven tenths of sixty rows are 42.
  expect(
    [18, 19].map(
      (rows) =>
        settleEdge(
          covered(rows, () => 0.3),
          place,
        ).ok,
    ),
  ).toEqual([true, false]);
});

test('a faint thing beside an edge, nearer and nearer', () => {
  const told = () =>
    [0.3, 1.2].flatMap((sigma) =>
      [0.13, 0.35].map((height) =>
        Array.from({ length: 15 }, (_, more) => {
          const size = { sigma, rows: 44, across: 50, angle: 6 };
          const { plane, place } = edge(size);
          const bar = edge({ ...size, levels: [0, 0.5 * height], offset: 3.4 + more }).plane.light;
          return measured({ ...plane, light: plane.light.map((one, at) => one + bar[at]!) }, place);
        }),
      ),
    );
  expect(kept(told)).toMatchSnapshot();
});

test('soft edges where there is little room, and bent ones', () => {
  const soft = () => [0.15, 0.3, 1.5, 2.2, 2.6, 3, 3.5, 4].flatMap((sigma) => [30, 36, 44].map((across) => edge({ sigma, across, rows: 50, angle: 7 }))).map(({ plane, place }) => measured(plane, place)); // prettier-ignore
  const bent = () =>
    [0.5, 1.5, 2, 2.5, 3, 4, 6].flatMap((by) => [0.6, 2.5].map((sigma) => {
      const { plane, place } = edge({ sigma, rows: 64, angle: 6 });
      // Each row is shifted along a bow.
      const light = plane.light.map((_, at) => plane.light[at - (at % 64) + Math.max(0, Math.min(63, (at % 64) + Math.round(by * ((Math.floor(at / 64) - 32) / 32) ** 2)))]!);
      return measured({ ...plane, light }, place);
    })); // prettier-ignore
  expect(kept(() => [soft(), bent()])).toMatchSnapshot();
});

test('the least and the most lean, upright and level', () => {
  const told = () =>
    (['upright', 'level'] as const)
      .flatMap((runs) => [1.9, 2.1, -2.4, 14.8, -15.2].map((angle) => edge({ runs, angle, rows: 72 })))
      .map(({ plane, place }) => {
        const told = settleEdge(plane, place);
        return told.ok ? told.value.angle : Object.values(told.fault);
      });
  expect(kept(told)).toMatchSnapshot();
});

test('how sure a figure is where it lies near to the ends of what is looked at', () => {
  const told = () =>
    [{ noise: 0.02 }, { noise: 0.08, sigma: 0.7, rows: 31 }].map((size) => {
      const { plane, place } = edge({ angle: 8, ...size });
      const course = edgeCourse(place, plane);
      const strip = cutStrip(plane, course, course.line, 12);
      const rows = Array.from({ length: strip.rows }, (_, row) => row);
      const [spread, window, lean] = [edgeSpread(strip, rows)!, edgeWindow(12, 6), course.line.lean];
      const half = halfContrast(edgeContrast(spread, window, lean)) ?? 0;
      return [2.6, 2.52, 2.48, 2.4, 2, 1, 0.5, 0.42, 0.4, 0.38, 0.3].map((share) =>
        relativeDeviation({ strip, rows, window, lean, apart: spread.apart, half: half / share }, seededRandom(9)),
      );
    });
  expect(kept(told)).toMatchSnapshot();
});

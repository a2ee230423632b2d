// Rows beside an edge, made up pixel by pixel so that they lie exactly at the bounds, and what is kept of them.
import { expect, test } from 'vitest';
import { fitEdge } from '../../src/photographs/edgeLine.ts';
import { roughEdge } from '../../src/photographs/roughEdge.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { kept } from '../kept/kept.ts';
import { summed } from '../kept/summed.ts';

/** Where the edge lies and how far it may be read, from the rise at each pixel of four alike rows; less than nothing where another stands there. */
function rough(rises: readonly number[], reach: number): string {
  const width = 2 * reach + 6;
  let light = 0;
  const row = Array.from({ length: width }, (_, at) => (light += rises[at - 3] ?? 0));
  const plane = { width, height: 4, light: Float32Array.from([...row, ...row, ...row, ...row]) };
  const told = roughEdge(plane, { runs: 'upright', first: 0, end: 4, line: { at: reach + 3, lean: 0 } }, reach);
  if (told.ok) return `${told.value.line.at - reach - 3}/${told.value.reach}`;
  return told.fault.is === 'two edges' ? `x${told.fault.apart}` : told.fault.is;
}

test('the steepest rise, where it ends, and what stands beside it', () => {
  const random = seededRandom(61);
  const told = () =>
    [8, 9, 13, 16].map((reach) =>
      Array.from({ length: 70 }, (_, set) => {
        const rises = Array.from({ length: 2 * reach }, () => (random() < 0.12 ? Math.floor(7 * random()) - 3 : 0));
        rises[reach + Math.floor((random() - 0.5) * reach * (set % 2))] = set % 3 === 0 ? -5 : 5;
        return rough(rises, reach);
      }).join(' '),
    );
  expect(kept(told)).toMatchSnapshot();
});

test('rises of exactly a tenth end the blur, of exactly two fifths are no other edge', () => {
  const reach = 16;
  const told = () =>
    [1, 2, 3, -1, -2, -3].map((rise) =>
      [3, 4, 5, 6, 7, 9, 12, 14].map((away) => {
        const one = (at: number) => Array.from({ length: 2 * reach }, (_, place) => (place === reach ? 5 : place === at ? rise : 0));
        const blurred = one(reach + away).map((each, place) => (place > reach && place < reach + away ? 1 : each));
        return [one(reach + away), one(reach - away), blurred].map((rises) => rough(rises, reach)).join(' ');
      }),
    );
  expect(kept(told)).toMatchSnapshot();
});

test('of rises that are alike, the middle one or the first is the edge', () => {
  const alike = (...places: readonly number[]) =>
    rough(
      Array.from({ length: 32 }, (_, at) => (places.includes(at) ? 5 : 0)),
      16,
    );
  expect([alike(16, 24), alike(8, 16), alike(8, 20), alike(10, 22)]).toEqual(['0/5', '0/5', '-8/8', '-6/8']);
});

/** Rows of a step, each at its place from the middle and by its own height, over two pixels. */
function strip(places: readonly number[], heights: readonly number[], reach = 6, begins = -reach + 0.3) {
  const across = 2 * reach;
  const start = Float64Array.from(places, (_, row) => begins + ((row * 7) % 10) / 20);
  const light = Float64Array.from({ length: places.length * across }, (_, at) => {
    const row = Math.floor(at / across);
    const from = start[row]! + (at % across) - places[row]!;
    return 0.2 + heights[row]! * Math.max(0, Math.min(1, (from + 1) / 2));
  });
  return { rows: places.length, across, reach, start, light };
}
const told = (one: Parameters<typeof fitEdge>[0]) => {
  const fit = fitEdge(one);
  return fit && [fit.shift.at, fit.shift.lean, fit.scatter, summed(fit.kept), fit.kept.length];
};

test('lines through few rows, of which some lie off', () => {
  const random = seededRandom(62);
  const all = () =>
    Array.from({ length: 90 }, (_, set) => {
      const rows = 4 + (set % 11);
      const places = Array.from({ length: rows }, (_each, row) => 0.1 * row - 0.7 + normal(random, 0, 0.04 * (set % 6)) + (random() < 0.2 ? 2 * random() : 0));
      return told(
        strip(
          places,
          places.map(() => (random() < 0.1 ? 0.1 : 0.5 + 0.3 * random())),
        ),
      );
    });
  expect(kept(all)).toMatchSnapshot();
});

test('rows of exactly half the usual step count, and none where the usual row has no step', () => {
  const places = [0.1, 0.3, 0, 0.4, 0.2];
  const halved = { ...strip([0, 0, 0, 0, 0], [1, 1, 1, 1, 1]), start: new Float64Array(5).fill(-5.5) };
  const light = halved.light.map((_, at) => (at % 12 >= 6 ? 1 : 0) * (Math.floor(at / 12) === 1 ? 0.5 : Math.floor(at / 12) === 3 ? 0.499 : 1));
  expect(fitEdge({ ...halved, light })?.kept).toEqual([0, 1, 2, 4]);
  expect(fitEdge(strip(places, [0, 0, 0, 0.4, 0.4]))).toBeNull();
  expect(kept(() => [told(strip(places, [0.3, 0.3, 0.3, 0.3, 0.3], 6, -8)), told(strip([-6.9, -7, -6.8, -6.9], [1, 1, 1, 1], 6, -8))])).toMatchSnapshot();
});

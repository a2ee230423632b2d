// Ramps put together from small cells, each with an edge of its own depth, blur, contrast and light, so that they are read, or not, by a hair.
import { expect, test } from 'vitest';
import { fNumber } from '../../src/optics/quantity.ts';
import type { FollowedEdge } from '../../src/photographs/followedEdge.ts';
import { normalBelow } from '../../src/photographs/normalCurve.ts';
import { measureRamp } from '../../src/photographs/ramp.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { millimetres } from '../../src/units.ts';
import { kept } from '../kept/kept.ts';

const OPTICS = { focalLength: millimetres(85), aperture: fNumber(2), distance: millimetres(1000), pitch: millimetres(0.02) };
const SIDE = 24;
interface Cell {
  readonly depth: number;
  readonly spread: number;
  readonly level?: boolean;
  readonly contrast?: number;
  /** Rows of it that are lit up to white. */
  readonly white?: number;
}

function told(cells: readonly Cell[], optics = OPTICS): unknown {
  const width = SIDE * cells.length;
  const light = new Float32Array(width * SIDE);
  for (const [index, { spread, level = false, contrast = 0.6, white = 0 }] of cells.entries()) {
    for (let y = 0; y < SIDE; y++) {
      for (let x = 0; x < SIDE; x++) {
        const [across, along] = level ? [y, x] : [x, y];
        const share = normalBelow((across + 0.5 - SIDE / 2) / spread);
        light[y * width + SIDE * index + x] = along - 4 < white && share > 0.5 ? 0.98 : 0.2 + contrast * share;
      }
    }
  }
  const edges = cells.map(({ depth, level = false }, index): FollowedEdge => {
    const [left, middle] = [SIDE * index, SIDE / 2];
    const ends = level ? [{ x: left + 4, y: middle }, { x: left + 20, y: middle }] : [{ x: left + middle, y: 4 }, { x: left + middle, y: 20 }]; // prettier-ignore
    return { from: ends[0]!, to: ends[1]!, depthFrom: depth, depthTo: depth, room: 17 };
  });
  const measure = measureRamp({ width, height: SIDE, light }, edges, optics);
  if (!measure.ok) return Object.values(measure.fault);
  const { error, interval, lies, leastBlur, growth, readings } = measure.value;
  return [lies, `${[error, interval.low, interval.high, leastBlur, growth].map((each) => Number(each.toPrecision(5))).join(' ')} ${readings.length}`];
}

/** As the optics would blur them: a little uneven, every third edge level. */
function ramp(count: number, focus: number, { least = 0.8, level = 0.8, from = -40, to = 40, growth = 4300, uneven = 0.03 } = {}): Cell[] {
  const random = seededRandom(91);
  return Array.from({ length: count }, (_, at) => {
    const depth = from + ((to - from) * at) / (count - 1);
    const own = at % 3 === 2 ? level : least;
    const spread = Math.sqrt(own ** 2 + growth * ((depth - focus) / (1000 + depth)) ** 2) * (1 + uneven * (random() - 0.5));
    return { depth, spread, level: at % 3 === 2 };
  });
}
const hidden = (cells: readonly Cell[], hides: (at: number) => boolean): Cell[] => cells.map((cell, at) => (hides(at) ? { ...cell, contrast: 0.001 } : cell));

test('twelve readings in half of the depth are enough, fewer are not', () => {
  const all = () => [
    [11, 12, 13].map((count) => told(ramp(count, 3))),
    [1, 2, 3].map((less) => told(hidden(ramp(14, 3), (at) => at < less))),
    // Three for each twelfth of the depth, but for the last, which has the end, too.
    [19, 21, 22].map((less) => told(hidden(ramp(37, -20), (at) => at >= 37 - less))),
    [18, 20, 22].map((less) => told(hidden(ramp(37, 20), (at) => at < less))),
    told([]),
    told(hidden(ramp(14, 0), () => true)),
  ];
  expect(kept(all)).toMatchSnapshot();
});

test('edges of two fifths of the usual contrast count, fainter ones do not', () => {
  const all = () => [0.37, 0.39, 0.41, 0.45, 0.78, 0.82].map((share) => told(ramp(16, 3).map((cell, at) => (at % 4 === 1 ? { ...cell, contrast: 0.6 * share } : cell)))); // prettier-ignore
  expect(kept(all)).toMatchSnapshot();
});

test('a quarter of white beside the usual edge is borne', () => {
  const all = () => [7, 8, 9, 12].map((white) => [14, 9, 7].map((lit) => told(ramp(16, 3).map((cell, at) => (at < lit ? { ...cell, spread: 0.6, white } : cell))))); // prettier-ignore
  expect(kept(all)).toMatchSnapshot();
});

test('edges of one direction blurred more than those of the other', () => {
  const all = () =>
    [[0.5, 0.95], [0.5, 1.05], [0.95, 0.5], [1.05, 0.5], [1, 1.65], [1, 1.75], [1.2, 2.2], [1.65, 1], [1.75, 1], [2.2, 1.2], [0.2, 1.1], [1.1, 0.2], [3, 2.9]].map(([least = 1, level = 1]) =>
      told(ramp(15, 3, { least, level, growth: 4000 })),
    ); // prettier-ignore
  expect(kept(all)).toMatchSnapshot();
});

test('focus beyond the ends, near to them, and on either side of the target', () => {
  const all = () =>
    [-80, -52, -44, -41.5, -39, -36, -6, -3, 0, 3, 6, 36, 39, 41.5, 44, 52, 80].map((focus) => told(ramp(14, focus, { uneven: focus % 2 === 0 ? 0.03 : 0.1 }))); // prettier-ignore
  expect(kept(all)).toMatchSnapshot();
});

test('ramps that are too flat for their lens, or long beside the distance', () => {
  const flat = { ...OPTICS, aperture: fNumber(11) };
  const near = { ...OPTICS, distance: millimetres(130) };
  const all = () => [
    [5, 8, 12, 18, 30].map((end) => [0, end - 1].map((focus) => told(ramp(14, focus, { from: -end, to: end, growth: 300, uneven: 0.1 }), flat))),
    [-40, 20, 38].map((focus) => told(ramp(14, focus, { growth: 3 }), near)),
    told(Array.from({ length: 14 }, (_, at) => ({ depth: at - 7, spread: 1 })), flat), // prettier-ignore
    told(Array.from({ length: 14 }, (_, at) => ({ depth: 10, spread: 1 + at / 9 }))), // prettier-ignore
  ];
  expect(kept(all)).toMatchSnapshot();
});

// The blur of edges and the focused plane where pixels, readings and depths lie exactly at a bound, kept so that no change goes unnoticed.
import { expect, test } from 'vitest';
import { layOutRamp } from '../../src/optics/print/rampLayout.ts';
import { blurAtDepth, blurVariances } from '../../src/photographs/blurAtDepth.ts';
import { edgeBlur, WIDEST } from '../../src/photographs/edgeBlur.ts';
import type { RampReading } from '../../src/photographs/followedEdge.ts';
import { normalBelow } from '../../src/photographs/normalCurve.ts';
import { fitNormalSum, type NormalSum } from '../../src/photographs/normalSum.ts';
import { rampEdges } from '../../src/photographs/rampEdges.ts';
import { fitRamp } from '../../src/photographs/rampFit.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { millimetres } from '../../src/units.ts';
import { kept } from '../kept/kept.ts';

/** An upright edge whose sides are not quite even. */
function upright(width: number, height: number, edge: number, spread: number) {
  const light = Float32Array.from({ length: width * height }, (_, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    return 0.2 + 0.6 * normalBelow((x + 0.5 - edge) / spread) + 0.0004 * ((x * 7 + y * 3) % 11) * Math.abs(x - edge);
  });
  return { width, height, light };
}
const DOWN = { x: 0, y: 1 };

test('pieces that hold whole rows and columns of pixels, to their outermost', () => {
  const read = (middle: number, halfLength: number, room: number, spread = 0.7) =>
    edgeBlur(upright(30, 30, middle + 0.2, spread), { middle: { x: middle, y: middle }, along: DOWN, halfLength, room });
  // Four rows of six pixels are just enough.
  expect([read(15, 2, 5) === null, read(15, 1.9, 5) === null, read(15, 1, 9) === null]).toEqual([false, false, true]);
  const told = () => [[10.5, 2, 5], [10.5, 3, 5], [10.5, 2, 25 / 3], [10.5, 4, 10], [14, 3, 10], [14.5, 3, 15], [1.5, 2, 8], [28.5, 2, 8], [10.5, 2, 5.0001]].map(
    ([middle = 0, half = 0, room = 0]) => [0.5, 1.1].map((spread) => read(middle, half, room, spread) ?? 'none'),
  ); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('no more than forty pixels to either side are looked at', () => {
  const wide = upright(120, 12, 60.3, 14);
  const read = (room: number) => edgeBlur(wide, { middle: { x: 60, y: 6 }, along: DOWN, halfLength: 5, room });
  expect(WIDEST).toBe(40);
  expect(kept(() => [60, 66, 67, 69, 100].map(read))).toMatchSnapshot();
});

test('samples that are fitted from afar, from nearby, exactly, or not at all', () => {
  const random = seededRandom(81);
  const count = 40;
  const along = Float64Array.from({ length: count }, () => 2 * random() - 1);
  const across = Float64Array.from({ length: count }, () => 12 * random() - 6);
  const of = (noise: number, contrast: number) =>
    across.map((x, at) => 0.3 + contrast * normalBelow((x - 0.4 - 0.2 * along[at]!) / 1.3) + normal(random, 0, noise));
  const starts: readonly NormalSum[] = [[0.3, 0.4, 0.4, Math.log(1.3), 0.2], [0.3, 0.4, 0, 1, 0], [0, 0.1, 5, 2, 1], [0.5, -0.2, -4, 0, 0], [0.3, 0.4, 40, -4, 0], [9, 9, 9, -9, 9], [0.3, 0.01, 0, 6, 0]]; // prettier-ignore
  const told = () => [of(0, 0.4), of(0.03, 0.4), of(0.3, 0.1), of(0.05, 0), new Float64Array(count).fill(0.3)].map((light) => starts.map((start) => { const fit = fitNormalSum({ count, along, across, light }, start); return fit && [fit.parameters[1], fit.parameters[2], fit.parameters[3], fit.uncertain].map((one) => Number(one.toPrecision(5))); })); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

function readings(focus: number, count: number, { scale = 1, noise = 0.03, turned = 3 } = {}): RampReading[] {
  const random = seededRandom(82);
  return Array.from({ length: count }, (_, at) => {
    const depth = -60 + (120 * (at + 0.5)) / count;
    const spread = scale * Math.sqrt(0.8 + 3000 * ((depth - focus) / (1000 + depth)) ** 2) * Math.exp(normal(random, 0, noise));
    return { depth, runs: at % turned === 0 ? 'level' : 'upright', spread, uncertain: 0.02 * spread, contrast: 0.7, off: 0, blown: 0 };
  });
}

test('the focused plane among depths that do not hold it, or hardly more than it', () => {
  const ranges = [[20, 60], [-80, -10], [7, 60], [-60, 3], [3, 7], [4.2, 5.9], [4.9, 5.3], [-1, 11], [-6, 16], [2, 30], [-30, 8], [-900, 900]] as const; // prettier-ignore
  const told = () =>
    ranges.flatMap(([from, to]) =>
      [readings(5, 24), readings(5, 9), readings(5.4, 30, { noise: 0.12 })].map((each) => {
        const fit = fitRamp(each, { distance: 1000, growth: 2800, from, to });
        return fit && [fit.focus, fit.low, fit.high, fit.growth, fit.unrest];
      }),
    );
  expect(kept(told)).toMatchSnapshot();
});

test('blur that is very large, or hardly grows', () => {
  const told = () =>
    [{ scale: 300 }, { scale: 100, turned: 99 }, { scale: 150, turned: 1 }, { scale: 0.02 }, { scale: 0.01, turned: 2 }].flatMap((how) =>
      [0.5, 1, 3, 2800].flatMap((growth) =>
        [5, -40].map((at) => {
          const fit = blurAtDepth(blurVariances(readings(5, 14, how)), { distance: 1000, growth }, at, 1.2);
          return fit && [fit.loss, ...fit.constants, fit.growth];
        }),
      ),
    );
  expect(kept(told)).toMatchSnapshot();
});

test('the nearest other edge lies to the right, where the picture is drawn out', () => {
  const told = () =>
    rampEdges(layOutRamp({ every: millimetres(5), count: 4 }), ({ x, y }) => ({ x: x + 0.01 * x * x, y: 2 * y + 0.003 * x * x, depth: 100 - y })).map(
      ({ room }) => room,
    );
  expect(kept(told)).toMatchSnapshot();
});

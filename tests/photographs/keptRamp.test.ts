// Numbers of the blur along the ramp, from the pixels beside its edges to the focused plane, kept so that no change of them goes unnoticed.
import { expect, test } from 'vitest';
import { fNumber } from '../../src/optics/quantity.ts';
import { layOutRamp } from '../../src/optics/print/rampLayout.ts';
import { blurAtDepth, blurVariances } from '../../src/photographs/blurAtDepth.ts';
import { edgeBlur } from '../../src/photographs/edgeBlur.ts';
import { readAlong, type FollowedEdge, type RampReading } from '../../src/photographs/followedEdge.ts';
import { normalBelow } from '../../src/photographs/normalCurve.ts';
import { fitNormalSum } from '../../src/photographs/normalSum.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import { measureRamp } from '../../src/photographs/ramp.ts';
import { rampEdges } from '../../src/photographs/rampEdges.ts';
import { fitRamp } from '../../src/photographs/rampFit.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { millimetres } from '../../src/units.ts';
import { kept } from '../kept/kept.ts';
import { summed } from '../kept/summed.ts';

/** Upright edges, as far apart as told, each as blurred at every height as told there. */
function striped(width: number, height: number, edges: readonly number[], spread: (y: number) => number, levels: readonly [number, number], grain = 0): Plane {
  const random = seededRandom(51);
  const light = Float32Array.from({ length: width * height }, (_, at) => {
    const [x, y] = [(at % width) + 0.5, Math.floor(at / width) + 0.5];
    const share = edges.reduce((sum, edge, index) => sum + (index % 2 === 0 ? 1 : -1) * normalBelow((x - edge - 0.08 * (y - height / 2)) / spread(y)), 0);
    return levels[0] + (levels[1] - levels[0]) * share + normal(random, 0, grain);
  });
  return { width, height, light };
}
const ALONG = { x: 0.08 / Math.hypot(1, 0.08), y: 1 / Math.hypot(1, 0.08) };

test('the blur of a short piece of an edge, by how blurred, grainy, bright and cramped it is', () => {
  const told = () =>
    [0.2, 0.6, 1.3, 3, 6].flatMap((spread) =>
      [[0.1, 0.7, 0], [0.9, 0.4, 0.01], [0.3, 0.318, 0], [0.3, 0.325, 0], [0.5, 1.05, 0.02]].map(([low = 0, high = 0, grain = 0]) => {
        const plane = striped(44, 26, [22], () => spread, [low, high], grain);
        return [[8, 60], [8, 9], [5, 14], [0.9, 30], [12, 25]].flatMap(([halfLength = 1, room = 1]) =>
          [0, 1.4, -4].map((off) => {
            const told = edgeBlur(plane, { middle: { x: 22 + off, y: 13 }, along: ALONG, halfLength, room });
            return told === null ? -1 : summed(Object.values(told));
          }),
        );
      }),
    ); // prettier-ignore
  const told1 = edgeBlur(
    striped(44, 26, [22], () => 1, [0.1, 0.99]),
    { middle: { x: 22.4, y: 12 }, along: { x: -ALONG.x, y: -ALONG.y }, halfLength: 7, room: 20 },
  );
  const level = edgeBlur(
    striped(44, 26, [22], () => 1, [0.1, 0.99]),
    { middle: { x: 22, y: 13 }, along: { x: 1, y: 0 }, halfLength: 7, room: 20 },
  );
  const corner = edgeBlur(
    striped(44, 26, [6], () => 1, [0.1, 0.9]),
    { middle: { x: 5.2, y: 1 }, along: ALONG, halfLength: 9, room: 20 },
  );
  expect(kept(() => [told(), told1 && Object.values(told1), level, corner && Object.values(corner)])).toMatchSnapshot();
});

test('the sum of a normal curve fitted to samples, from far and near', () => {
  const told = () => {
    const random = seededRandom(52);
    const count = 60;
    const along = Float64Array.from({ length: count }, () => 2 * random() - 1);
    const across = Float64Array.from({ length: count }, () => 16 * random() - 8);
    const light = across.map((x, at) => 0.2 + 0.5 * normalBelow((x - 0.7 - 0.3 * along[at]!) / 1.8) + normal(random, 0, 0.02));
    const fits = [[0.2, 0.5, 0, 0.5, 0], [0, 1, 2, 1.5, 0], [0.7, -0.5, -3, -2, 1], [0.4, 0, 0, 0, 0], [0.2, 0.5, 7.9, -3, 0]].map((start) => fitNormalSum({ count, along, across, light }, start as unknown as Parameters<typeof fitNormalSum>[1]));
    return [fits.map((fit) => fit && [...fit.parameters, fit.uncertain]), fitNormalSum({ count: 0, along, across, light }, [0, 1, 0, 0, 0])];
  }; // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

const edgesAt = (xs: readonly number[], height: number): FollowedEdge[] =>
  xs.map((x) => ({ from: { x: x + 0.04 * height, y: height }, to: { x: x - 0.04 * height, y: 0 }, depthFrom: -60, depthTo: 60, room: 18 }));

test('pieces of an edge that is followed, with their depths', () => {
  const told = () => {
    const plane = striped(60, 130, [30], (y) => 0.8 + Math.abs(y - 50) / 30, [0.1, 0.8], 0.005);
    const upright = striped(60, 60, [30], () => 1.1, [0.1, 0.8]);
    const turned = { ...upright, light: upright.light.map((_, at) => upright.light[(at % 60) * 60 + Math.floor(at / 60)]!) };
    const rows = [plane.height, 23, 24, 25, 7].map((height) =>
      readAlong(plane, { ...edgesAt([30], 130)[0]!, from: { x: 30 + 0.08 * (height - 65), y: height } }, 900),
    );
    const level = readAlong(turned, { from: { x: 10, y: 29 }, to: { x: 50, y: 32.2 }, depthFrom: 5, depthTo: 5, room: 12 }, 900);
    return [rows, level]
      .flat()
      .map((pieces) => [pieces].flat().map((piece) => piece && [piece.runs, piece.depth, summed([piece.spread, piece.uncertain, piece.contrast, piece.off])]));
  };
  const half: Plane = { width: 30, height: 30, light: Float32Array.from({ length: 900 }, (_, at) => normalBelow(((at % 30) - Math.floor(at / 30)) / 1.5)) };
  const diagonal = readAlong(half, { from: { x: 6, y: 6 }, to: { x: 22, y: 22 }, depthFrom: 0, depthTo: 0, room: 14 }, 900);
  expect(kept(() => [told(), diagonal])).toMatchSnapshot();
});

/** As a lens at a metre would read them, with some that fit nothing. */
function readings(focus: number, count: number, noise: number, { wild = 0, level = 3, from = -60, to = 60, growth = 3000 } = {}): RampReading[] {
  const random = seededRandom(53 + count);
  return Array.from({ length: count }, (_, at) => {
    const depth = from + ((to - from) * (at + 0.5)) / count;
    const runs = at % level === 0 ? 'level' : 'upright';
    const spread =
      Math.sqrt((runs === 'level' ? 0.9 : 0.6) + growth * ((depth - focus) / (1000 + depth)) ** 2) * Math.exp(normal(random, 0, noise)) +
      (at % 7 === 3 ? wild : 0);
    return { depth, runs, spread, uncertain: 0.03 * spread, contrast: 0.7, off: 0, blown: 0 };
  });
}
const CASES = [[5, 30, 0.02], [-20, 20, 0.05], [40, 9, 0.03], [70, 24, 0.02], [0, 8, 0], [12, 26, 0.04, { wild: 3 }], [-5, 40, 0.3], [3, 25, 0.03, { level: 99 }], [8, 30, 0.03, { growth: 100 }], [-8, 30, 0.02, { growth: 9000, level: 1 }], [0, 7, 0.02]] as const; // prettier-ignore

test('how well blur fits a lens focused at one depth', () => {
  const told = () =>
    CASES.map(([focus, count, noise, more]) => {
      const blurs = blurVariances(readings(focus, count, noise, more));
      return [-80, 0, focus, 33].flatMap((at) => [1, 3].map((unrest) => { const fit = blurAtDepth(blurs, { distance: 1000, growth: 2800 }, at, unrest); return fit && [fit.loss, ...fit.constants, fit.growth, summed(fit.rests)]; }));
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('the focused plane and its interval', () => {
  const told = () =>
    CASES.map(([focus, count, noise, more]) => {
      const fit = fitRamp(readings(focus, count, noise, more), { distance: 1000, growth: 2800, from: -180, to: 180 });
      return fit && [fit.focus, fit.low, fit.high, fit.least.upright ?? -1, fit.least.level ?? -1, fit.growth, fit.unrest];
    });
  expect(kept(told)).toMatchSnapshot();
});

const OPTICS = { focalLength: millimetres(85), aperture: fNumber(2), distance: millimetres(1000), pitch: millimetres(0.02) };

test('a whole ramp of edges, in focus somewhere, or not to be read', () => {
  const told = () =>
    [[0, 0.7, 0.1, 0.8], [35, 0.7, 0.1, 0.8], [-52, 0.9, 0.2, 0.7], [90, 0.7, 0.1, 0.8], [-120, 0.8, 0.1, 0.8], [10, 0.7, 0.2, 1.1], [0, 3, 0.1, 0.8], [62, 0.7, 0.1, 0.8], [0, 0.7, 0.3, 0.315]].map(([focus = 0, least = 1, low = 0, high = 1]) => {
      const height = 150;
      const depthAt = (y: number) => 1 / (1 / 940 + ((height - y) / height) * (1 / 1060 - 1 / 940)) - 1000;
      const blur = (y: number) => Math.sqrt(least ** 2 + 9500 * ((depthAt(y) - focus) / (1000 + depthAt(y))) ** 2);
      const plane = striped(110, height, [22, 44, 66, 88], blur, [low, high], 0.004);
      return [[22, 44, 66, 88], [44], [44, 130, 140, 150], []].map((xs) => {
        const told = measureRamp(plane, edgesAt(xs, height), OPTICS);
        return told.ok ? [[told.value.error, told.value.interval.low, told.value.interval.high, told.value.leastBlur, told.value.growth, told.value.readings.length], told.value.lies] : Object.values(told.fault);
      });
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('where the edges of a ramp lie in a picture', () => {
  const told = () =>
    rampEdges(layOutRamp({ every: millimetres(5), count: 4 }), ({ x, y }) => ({ x: 3 * x + 0.2 * y, y: 2 * y, depth: 100 - y })).map(({ from, to, depthFrom, depthTo, room }) => [from.x, from.y, to.x, to.y, depthFrom, depthTo, room]); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

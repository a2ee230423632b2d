// How far an edge's blur reaches, on rises made up bin by bin, so that they end, begin and stand out exactly at the bounds.
import { expect, test } from 'vitest';
import { edgeExtent } from '../../src/photographs/edgeExtent.ts';
import { edgeShape } from '../../src/photographs/edgeShape.ts';
import { kept } from '../kept/kept.ts';

const REACH = 8;
const BINS = 8 * REACH;
/** Two rows, so that noise of one pixel over one pixel counts as told. */
const told = (light: ArrayLike<number>, noise = 0, counts = [1, 1, 0, 0]): string => {
  const extent = edgeExtent({ light: Float64Array.from(light), counts, apart: 0, noise }, light.length / 8);
  return extent === null ? '-' : `${extent.lobe}/${extent.clear}${extent.beside ? 'b' : ''}`;
};
const bins = (of: (bin: number) => number, count = BINS): number[] => Array.from({ length: count }, (_, bin) => of(bin));
const all = (count: number, of: (at: number) => string): string => Array.from({ length: count }, (_, at) => of(at)).join(' ');

test('steps anywhere, upwards and downwards, the steepest near the middle', () => {
  const all1 = () =>
    [1, -3].map((height) => [
      all(BINS - 2, (at) => told(bins((bin) => (bin > at ? height : 0)))),
      all(BINS - 2, (at) => told(bins((bin) => (bin > at ? height : 0) + (bin >= 32 ? height : 0)))),
      all(40, (at) => told(bins((bin) => (bin > at ? height : 0), 40))),
      all(BINS - 2, (at) => told(bins((bin) => (bin > at ? 2 * height : 0) + (bin > 63 - at ? 2 * height : 0) + (bin > 33 ? height : 0)))),
    ]);
  expect(kept(all1)).toMatchSnapshot();
});

test('rises of any width, that end in the strip or run out of it on either side', () => {
  const ramp = (from: number, to: number) => told(bins((bin) => 4 * Math.max(0, Math.min(bin, to) - from)));
  const sides = (left: number, right: number) =>
    told(bins((bin) => (bin < 32 ? -left * (31 - bin) : 40 + right * (bin - 32)))) + told(bins((bin) => -left * Math.max(0, 31 - bin) - right * bin));
  const all1 = () => [
    [-3, 0, 2, 9, 16, 24].map((from) => all(20, (more) => ramp(from, 46 + more))),
    [66, 64, 61, 52, 40].map((to) => all(22, (at) => ramp(at - 3, to))),
    [0, 1, 2, 3].map((left) => [0, 1, 2, 3, 4].map((right) => sides(left, right)).join(' ')),
  ];
  expect(kept(all1)).toMatchSnapshot();
});

test('a slope of exactly a tenth is still the blur, a little less is not', () => {
  // Steps of forty in one bin, and four a bin beside it: the slopes are forty and sixteen, and so on down.
  const beside = (each: number, from: number, to: number) => bins((bin) => (bin >= 32 ? 160 : 0) + each * Math.max(0, Math.min(bin, to) - from));
  const all1 = () =>
    [0, 1, 2, 3, 4, 5].map((each) => [16, 20, 27, 28, 30].map((from) => `${told(beside(each, from, 36))} ${told(beside(each, 28, 64 - from))}`).join(' '));
  // A tail of a tenth of the height exactly.
  const tail = (share: number) => told(bins((bin) => (bin >= 32 ? 10 : 0) + (bin >= 38 ? share : 0)));
  expect(kept(() => [all1(), [0.9, 1, 1.1].map(tail)])).toMatchSnapshot();
});

test('what stands beside an edge, from near to the ends, by how much', () => {
  const all1 = () =>
    [0.1, 0.14, 0.16, 0.3, -0.3, 0.6].map((height) => all(BINS + 1, (at) => told(bins((bin) => (bin >= 32 ? 1 : 0) + (bin >= at ? height : 0)))));
  // In the outermost bin alone, on either side: a quarter of it is the slope there.
  const first = (height: number, noise: number) =>
    told(
      bins((bin) => (bin === 0 ? -height : bin >= 32 ? 1 : 0)),
      noise,
    );
  const last = (height: number, noise: number) =>
    told(
      bins((bin) => (bin === BINS - 1 ? 1 + height : bin >= 32 ? 1 : 0)),
      noise,
    );
  expect([first(1, 0), last(1, 0), first(0.5, 0), last(0.5, 0)]).toEqual(['1/6b', '1/6b', '1/8', '1/8']);
  // Five times the noise exactly is no other thing.
  const NOISE = 5 / 128;
  expect([first(100 / 128, NOISE), first(101 / 128, NOISE), last(100 / 128, NOISE)]).toEqual(['1/8', '1/6b', '1/8']);
  expect(kept(all1)).toMatchSnapshot();
});

test('the more noise, the more is smoothed, until nothing stands out', () => {
  const step = (count: number) => bins((bin) => (bin >= count / 2 ? 1 : 0), count);
  const all1 = () =>
    [24, 32, 64, 128, 256, 264].map((count) =>
      [0, 0.03, 0.04, 0.0401, 0.05, 0.0566, 0.07, 0.08, 0.0801, 0.11, 0.12].map((noise) => told(step(count), noise)).join(' '),
    );
  expect(told(step(BINS), 0.04)).toBe('1/8');
  expect(told(step(BINS), 0.0401)).not.toBe('1/8');
  expect(kept(() => [all1(), [0.05, 0.1, 0.2].map((noise) => told(step(BINS), noise, [3, 4, 3, 7]))])).toMatchSnapshot();
});

test('light past its level in the last and the first half pixel of a strip', () => {
  const strip = { rows: 4, across: 16, reach: 8, start: new Float64Array(4), light: new Float64Array(64).fill(0.5) };
  const over = (at: number) =>
    edgeShape(
      strip,
      { light: Float64Array.from(bins((bin) => (bin >= 32 ? 0.6 : 0.2) + (bin === at ? 0.3 : 0))), counts: [1, 1, 1, 1], apart: 0, noise: 0 },
      [0, 1, 2, 3],
    );
  const blown = (column: number) =>
    edgeShape(
      { ...strip, light: strip.light.map((one, at) => (at % 16 === column && at < 32 ? 1 : one)) },
      { light: new Float64Array(64).fill(0.4), counts: [1, 1, 1, 1], apart: 0, noise: 0 },
      [0, 1, 2, 3],
    ).blown;
  expect([3, 4, 11, 12].map(blown)).toEqual(['white', null, null, 'white']);
  expect(kept(() => [62, 63, 0, 1, 31, 32, 50].map((at) => over(at).overshoot))).toMatchSnapshot();
});

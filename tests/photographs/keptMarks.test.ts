// Numbers of the marks of a print, from dark spots to what stands between them, kept so that no change of them goes unnoticed.
import { expect, test } from 'vitest';
import { homographyFrom, through, type Homography } from '../../src/photographs/homography.ts';
import { arrangementsIn, FLAT } from '../../src/photographs/arrangement.ts';
import { shows } from '../../src/photographs/between.ts';
import { darkSpots } from '../../src/photographs/darkSpots.ts';
import { fieldPatterns } from '../../src/photographs/fieldPatterns.ts';
import { readMarks } from '../../src/photographs/fourMarks.ts';
import { dotLights, tellDots } from '../../src/photographs/markDots.ts';
import { agrees, fieldPattern, stripePattern, type Pattern } from '../../src/photographs/pattern.ts';
import { wholePicture } from '../../src/photographs/pixelSource.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import type { Quad } from '../../src/photographs/quad.ts';
import type { SquaresSeen } from '../../src/photographs/squaresSeen.ts';
import { BAR_COUNTS } from '../../src/optics/print/sequence.ts';
import { dotsFor } from '../../src/optics/print/dots.ts';
import { LEANS, markCorners, onMark } from '../../src/optics/print/marks.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { kept } from '../kept/kept.ts';
import { summed } from '../kept/summed.ts';

test('dark spots in grain and clouds, of many sizes', () => {
  const told = () =>
    [[90, 75], [57, 58], [40, 30], [29, 70]].map(([width = 1, height = 1], set) => {
      const random = seededRandom(60 + set);
      const light = Float32Array.from({ length: width * height }, (_, at) => 0.5 + 0.35 * Math.sin((at % width) / 4) * Math.cos(Math.floor(at / width) / (3 + set)) + normal(random, 0, 0.03));
      return [[1, 90], [4, 14], [6.5, 44], [10, 12]].map(([least = 1, most = 1]) => { const spots = darkSpots({ width, height, light }, least, most); return [spots.length, summed(spots.map(({ area }) => area)), summed(spots.flatMap(({ outline }) => outline.flatMap(({ x, y }) => [x, y])))]; });
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

const TURNED: Homography = [5, 0.7, 60, -0.5, 4.6, 70, 0.0011, -0.0006, 1];
const quadOfMark = (x: number, y: number, box = 9): Quad =>
  markCorners({ middle: { x, y }, box, lean: LEANS.target }).map((corner) => through(TURNED, corner)) as unknown as Quad;
const PLACES = [[0, 0], [50, 0], [0, 60], [50, 60]] as const; // prettier-ignore

/** Four marks with the dots of a number, dimmed and grey as told. */
function printed(dots: readonly boolean[], black = 0.05, dot = 0.8): Plane {
  const back = homographyFrom(PLACES.map(([x, y]) => ({ from: through(TURNED, { x, y }), to: { x, y } })))!;
  const [width, height] = [400, 420];
  const light = Float32Array.from({ length: width * height }, (_, at) => {
    const { x, y } = through(back, { x: (at % width) + 0.5, y: Math.floor(at / width) + 0.5 });
    const index = (x > 25 ? 1 : 0) + (y > 30 ? 2 : 0);
    const [left, top] = PLACES[index]!;
    const lean = (LEANS.target * Math.PI) / 180;
    const [u, v] = [(x - left) * Math.cos(lean) + (y - top) * Math.sin(lean), (y - top) * Math.cos(lean) - (x - left) * Math.sin(lean)];
    if (Math.max(Math.abs(u), Math.abs(v)) > 9 / (Math.cos(lean) + Math.sin(lean)) / 2) return 0.8;
    const place = (v > 0 ? 2 : 0) + (u > 0 ? 1 : 0);
    return dots[4 * index + place] === true && Math.hypot(Math.abs(u) - 1.35, Math.abs(v) - 1.35) < 1 ? dot : black;
  });
  return { width, height, light };
}
const QUADS = PLACES.map(([x, y]) => quadOfMark(x, y)) as unknown as readonly [Quad, Quad, Quad, Quad];

test('dots and numbers of four marks, one of them missing, turned, grey or solid', () => {
  const told = () =>
    [3, 77].flatMap((number) => {
      const dots = dotsFor('target', number);
      return [printed(dots), printed(dots.toReversed()), printed(dots, 0.05, 0.2), printed(dots, 0.05, 0.1), printed(dots, 0.6, 0.8), printed(dots.map((one, at) => one !== (at === 6)))].map((plane, at) => {
        const read = [null, 0, 1, 2, 3].map((missing) => readMarks('target', wholePicture(plane), { quads: QUADS.map((quad, index) => (index === missing ? null : quad)) as unknown as typeof QUADS }));
        const lights = QUADS.map((quad) => dotLights(plane, quad));
        return [read.map((one) => [one.are, 'number' in one ? one.number : 0, 'side' in one ? one.side : 0, 'quads' in one ? summed(one.quads.flatMap((quad) => (quad ? quad.flatMap(({ x, y }) => [x, y]) : [0]))) : 0]), at < 4 ? lights.map((four) => four && summed(four)) : []];
      });
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('dots at their bounds', () => {
  const rows = [[0, 0.119], [0, 0.12], [0, 0.299], [0, 0.3], [0, 0.5, 0.31], [0, 0.5, 0.3], [0, 1, 0.62], [0, 1, 0.619], [0, 1, 0.38], [0.25, 0.75, 0.56], [0.25, 0.75, 0.565]]; // prettier-ignore
  const flat = { width: 60, height: 60, light: new Float32Array(3600).fill(0.4) };
  expect(kept(() => [rows.map((lights) => tellDots(lights)), dotLights(flat, QUADS[0])])).toMatchSnapshot();
});

test('what stands between marks, as it is drawn', () => {
  const flat = ({ across, down, black }: Pattern) => [black.length, summed(across), summed(down), summed(black)];
  const told = () => [
    BAR_COUNTS.map((bars) => [flat(fieldPattern(bars, 9, 1.5)), flat(fieldPattern(bars, 7, 0.05))]),
    flat(stripePattern()),
    [0.9, 1.2, 1.35, 1.5, 1.8].map((ratio) => fieldPatterns(BAR_COUNTS[0]!, 9, [1.5, 3.34])(ratio).map(flat)),
  ];
  expect(kept(told)).toMatchSnapshot();
});

test('whether a picture shows it, and how well at least', () => {
  const pattern = fieldPattern(BAR_COUNTS[0]!, 9, 2);
  const stripes = stripePattern();
  const [width, height] = [300, 340];
  const at: Homography = [230, 12, 30, -9, 250, 40, 0.05, -0.03, 1];
  const random = seededRandom(61);
  const drawn = (of: Pattern): Plane => {
    const light = Float32Array.from({ length: width * height }, () => 0.6 + normal(random, 0, 0.12));
    for (const [index, black] of of.black.entries()) { const { x, y } = through(at, { x: of.across[index]!, y: of.down[index]! }); for (const [u, v] of [[0, 0], [1, 0], [0, 1], [-1, 0], [0, -1]] as const) light[(Math.floor(y) + v) * width + Math.floor(x) + u] = (black === 1 ? 0.3 : 0.7) + normal(random, 0, 0.25); } // prettier-ignore
    return { width, height, light };
  };
  const told = () =>
    [pattern, stripes].flatMap((of) => {
      const plane = drawn(of);
      return [false, true].flatMap((turned) => {
        const way: Homography = turned ? [-at[0], -at[1], at[0] + at[1] + at[2], -at[3], -at[4], at[3] + at[4] + at[5], -at[6], -at[7], at[6] + at[7] + at[8]] : at;
        return [false, true].map((asked) => Array.from({ length: 50 }, (_, least) => agrees(plane, way, of, asked, least / 40 - 0.3)).filter(Boolean).length);
      });
    }); // prettier-ignore
  const even: Plane = { width: 9, height: 9, light: new Float32Array(81).fill(0.5) };
  expect(kept(() => [told(), agrees(even, at, pattern, false, -0.01), agrees(even, at, pattern, false, 0)])).toMatchSnapshot();
});

test('arrangements of squares that stand about as marks do, and what lies between them', () => {
  const random = seededRandom(62);
  const solid = printed([]);
  const told = () =>
    Array.from({ length: 14 }, (_, set) => {
      const shaken = PLACES.flatMap(([x, y], index) => (index === set ? [] : [quadOfMark(x + normal(random, 0, 0.3 * set), y + normal(random, 0, 0.3 * set), 9 + normal(random, 0, 0.15 * set))]));
      const more = Array.from({ length: set }, () => quadOfMark(110 * random() - 20, 110 * random() - 20));
      const seen = { inView: () => [...shaken, ...more], between: () => ({ plane: solid, factor: 1 }) } as unknown as SquaresSeen;
      const patterns = [{ across: Float64Array.of(0, 0.5, 1), down: Float64Array.of(0, 0.5, 1), black: Uint8Array.of(1, 0, 1) }];
      const all = arrangementsIn(seen, 0, { kind: 'target', ...FLAT, agrees: set % 2 === 0 ? -2 : 0.5, patterns: () => patterns, across: [40, 55], down: [55, 70] });
      return [all.length, summed(all.flatMap(({ quads }) => quads.flatMap((quad) => (quad ? quad.flatMap(({ x, y }) => [x, y]) : [0])))), ...[null, 0, 1, 2, 3].map((missing) => [-0.5, 0.2, 0.7, 0.95].filter((least) => shows(seen, QUADS.map((quad, index) => (index === missing ? null : quad)), patterns, least)).length)];
    }); // prettier-ignore
  expect(kept(() => [told(), through(TURNED, onMark({ middle: { x: 3, y: 4 }, box: 9, lean: LEANS.target }, 1, 2))])).toMatchSnapshot();
});

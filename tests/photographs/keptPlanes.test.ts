// Numbers of planes of light and of the mappings between print and picture, kept so that no change of them goes unnoticed.
import { expect, test } from 'vitest';
import { cropAround } from '../../src/photographs/crop.ts';
import { unlit } from '../../src/photographs/findFault.ts';
import { frameOf, seenFrom, turnedQuad } from '../../src/photographs/frame.ts';
import { homographyFrom, inverse, robustHomography, through, type Homography } from '../../src/photographs/homography.ts';
import { affineAt } from '../../src/photographs/localScale.ts';
import { boxOf, wholePicture } from '../../src/photographs/pixelSource.ts';
import { cutPlane, planeOf, writeLight, type Plane } from '../../src/photographs/plane.ts';
import { poseOf } from '../../src/photographs/pose.ts';
import { areaOf, quadOf, sidesOfQuad, type Quad } from '../../src/photographs/quad.ts';
import { halve } from '../../src/photographs/shrink.ts';
import { lightAt, sharpQuad } from '../../src/photographs/sharpQuad.ts';
import { lookAt } from '../../src/photographs/squaresSeen.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { millimetres } from '../../src/units.ts';
import { kept } from '../kept/kept.ts';
import { summed } from '../kept/summed.ts';

const noise = (width: number, height: number, seed: number): Plane => {
  const random = seededRandom(seed);
  return { width, height, light: Float32Array.from({ length: width * height }, random) };
};
const LEANING: Homography = [9, 1.5, 300, -1.2, 8, 220, 0.0012, -0.0007, 1];
const points = (count: number, seed: number) => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => ({ x: 60 * random() - 20, y: 50 * random() - 30 }));
};

test('pixels become light, whole and in part, and parts are cut out and shown', () => {
  const told = () => {
    const rgba = Uint8ClampedArray.from({ length: 4 * 256 * 3 }, (_, at) => (at % 4 === Math.floor(at / 1024) ? Math.floor(at / 4) % 256 : 3 * (at % 4)));
    const plane = planeOf(rgba, 256, 3);
    const codes = [0, 1, 9, 10, 11, 12, 128, 254, 255].flatMap((code) => [0, 1, 2].map((row) => plane.light[256 * row + code]!));
    const part = noise(7, 6, 40);
    writeLight(part, { left: 2, top: 1, width: 3, height: 4 }, rgba.subarray(400, 448));
    const crops = [[3, 3, 4], [0, 0, 5], [6.5, 5.5, 3], [-4, 9, 2]].map(([x = 0, y = 0, size = 1]) => summed(cropAround(wholePicture(part), { x, y }, size).rgba));
    const dark = { width: 4, height: 2, light: Float32Array.of(0, 0.002, 0.0031, 0.0031308, 0.0032, 0.02, 0.5, 1) };
    return [codes, part.light, crops, cropAround(wholePicture(dark), { x: 2, y: 1 }, 4).rgba, cutPlane(part, -2, -1, 11, 9).light, cutPlane(part, 2, 3, 2, 2).light];
  }; // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('pictures are halved, again and again', () => {
  const told = () => {
    const source = wholePicture(noise(23, 18, 41));
    const small = [1, 2, 4, 8].map((factor) => source.reduced(factor));
    return [
      small.map(({ width, height }) => [width, height]),
      small.map(({ light }) => summed(light)),
      halve(noise(5, 4, 42)).light,
      Object.values(boxOf(points(5, 43), 3)),
    ];
  };
  expect(kept(told)).toMatchSnapshot();
});

test('mappings from points, and back, with what fits worst left out', () => {
  const told = () => {
    const pairs = points(14, 44).map((from) => ({ from, to: through(LEANING, from) }));
    const off = (count: number, by: number) => pairs.map(({ from, to }, at) => ({ from, to: at < count ? { x: to.x + by * (at + 1), y: to.y - by } : to }));
    const fits = (count: number, by: number, of: number, within: number) => {
      const found = robustHomography(off(count, by).slice(0, of), within);
      return found && [...found.homography, found.kept.length];
    };
    const flat = pairs.slice(0, 4).map(({ from }) => ({ from, to: { x: 1, y: 1 } }));
    return [
      inverse(LEANING), homographyFrom(pairs), homographyFrom(off(3, 0.4)), homographyFrom(pairs.slice(0, 4)), homographyFrom(pairs.slice(0, 3)), homographyFrom(flat),
      fits(0, 0, 14, 0.1), fits(2, 9, 14, 0.5), fits(5, 40, 14, 0.5), fits(6, 40, 14, 0.5), fits(7, 40, 14, 0.5), fits(1, 9, 9, 0.5), fits(1, 9, 8, 0.5), fits(1, 9, 7, 0.5), fits(2, 9, 9, 0.5), fits(3, 0.2, 14, 0.5),
    ]; // prettier-ignore
  };
  expect(kept(told)).toMatchSnapshot();
});

test('how large, how turned and how tilted a mapping shows a print', () => {
  const told = () =>
    points(4, 45).map((point) => {
      const turned: Homography = [8 * Math.cos(point.x), -7 * Math.sin(point.x), 900, 8 * Math.sin(point.x), 7 * Math.cos(point.x), 700, 0.001, 0.002, 1];
      const camera = { focalLength: millimetres(85), pitch: millimetres(0.006), width: 2000, height: 1400 };
      return [
        ...Object.values(affineAt(LEANING, point)),
        ...Object.values(affineAt(turned, point)),
        ...Object.values(poseOf(turned, camera)),
        ...Object.values(poseOf(LEANING, camera)),
      ];
    });
  expect(kept(told)).toMatchSnapshot();
});

const quadrangle = (turn: number, wide: number, high: number, skew = 0): Quad => {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const corner = (x: number, y: number) => ({ x: 40 + x * cos - y * sin + (skew * x * y) / wide, y: 36 + x * sin + y * cos });
  return [corner(-wide, -high), corner(wide, -high), corner(wide, high), corner(-wide, high)];
};

test('what lies where as seen from a mark', () => {
  const told = () =>
    (['target', 'ramp'] as const).flatMap((kind) =>
      [0, 1, 2, 3, 5].map((quarters) => {
        const frame = frameOf(kind, turnedQuad(quadrangle(0.3, 12, 9, 2), quarters));
        return [frame.middle, frame.right, frame.down, ...points(2, 46).map((point) => seenFrom(frame, point))].flatMap(({ x, y }) => [x, y]);
      }),
    );
  expect(kept(told)).toMatchSnapshot();
});

/** Pixels inside a quadrangle, as a spot of them; `holes` of each hundred are missing. */
function spotIn(quad: Quad, holes = 0) {
  const inside = (x: number, y: number) => quad.every((a, at) => { const b = quad[(at + 1) % 4]!; return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x) > 0; }); // prettier-ignore
  const rows = Array.from({ length: 90 }, (_, y) => Array.from({ length: 90 }, (_each, x) => x).filter((x) => inside(x + 0.5, y + 0.5)));
  const outline = rows.flatMap((xs, y) =>
    xs.length === 0
      ? []
      : [
          { x: xs[0]!, y: y + 0.5 },
          { x: xs.at(-1)! + 1, y: y + 0.5 },
        ],
  );
  return { area: Math.round(rows.flat().length * (1 - holes / 100)), outline };
}

test('spots that fill a quadrangle, and those that do not', () => {
  const told = () => {
    const some = [0, 0.2, 0.5, 0.785, 1.2].flatMap((turn) => [[12, 12], [12, 7], [16, 7.5], [16, 6.5], [20, 9]].flatMap(([wide = 0, high = 0]) => [0, 3, 6, 9].map((skew) => quadrangle(turn, wide, high, skew))));
    const told = some.map((quad) => quadOf(spotIn(quad)));
    const holes = [30, 34, 36, 37, 38, 40].map((each) => quadOf(spotIn(quadrangle(0.2, 12, 12), each)) !== null);
    const ring = (sides: number, squeeze: number) => quadOf({ area: 900, outline: Array.from({ length: sides }, (_, at) => ({ x: 40 + 18 * Math.cos((2 * Math.PI * at) / sides + 0.1), y: 40 + squeeze * 18 * Math.sin((2 * Math.PI * at) / sides + 0.1) })) });
    return [told.map((quad) => quad && summed(quad.flatMap(({ x, y }) => [x, y]))), holes, [3, 4, 5, 6, 8, 12, 30].map((sides) => [ring(sides, 1) !== null, ring(sides, 0.6) !== null]), some.slice(0, 3).map((quad) => [areaOf(quad), ...sidesOfQuad(quad)])];
  }; // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

/** A dark quadrangle whose sides are soft, with grain. */
function painted(quad: Quad, soft: number, dark: number, grain: number): Plane {
  const random = seededRandom(47);
  const share = (x: number, y: number) => quad.reduce((least, a, at) => { const b = quad[(at + 1) % 4]!; return least / (1 + Math.exp(-((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y) / soft)); }, 1); // prettier-ignore
  return {
    width: 80,
    height: 72,
    light: Float32Array.from({ length: 80 * 72 }, (_, at) => 0.8 - (0.8 - dark) * share((at % 80) + 0.5, Math.floor(at / 80) + 0.5) + normal(random, 0, grain)),
  };
}

test('corners made sharp, from here and there', () => {
  const told = () =>
    [0.05, 0.4, 0.66, 0.675, 0.7].flatMap((dark, at) =>
      [[3, 3], [6, 5], [12, 9], [14, 14], [24, 20]].map(([wide = 0, high = 0]) => {
        const plane = painted(quadrangle(0.1 + at / 9, wide, high, 1), 0.6 + at / 4, dark, at % 2 === 0 ? 0.004 : 0);
        return [0, 0.8, 3, 7].map((off) => [0.1, 0.19].map((reach) => sharpQuad(plane, quadrangle(0.1 + at / 9 + off / 60, wide + off / 2, high, 1 - off / 8), reach)).map((quad) => (quad ? summed(quad.flatMap(({ x, y }) => [x, y])) : -1)));
      }),
    ); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('light between pixels, within and beyond', () => {
  const plane = noise(6, 5, 48);
  expect(
    kept(() => [-2, 0, 0.4, 0.5, 1.3, 3.5, 5.49, 5.5, 6, 9].map((x) => [-1, 0.5, 0.9, 4.4, 4.5, 7].map((y) => lightAt(plane, { x, y })))),
  ).toMatchSnapshot();
});

test('pictures that are blown, black, or neither by a hair', () => {
  const told = () =>
    [0.88, 0.9, 0.91, 0.96, 0.97, 0.98, 1].map((share) => [[0.971, 0.5], [0.97, 0.5], [0.0039, 0.5], [0.004, 0.5], [0.1, 0.5], [2, 0]].map(([light = 0, rest = 0]) => unlit({ width: 100, height: 70, light: Float32Array.from({ length: 7000 }, (_, at) => (Math.floor(at / 7) < Math.round(1000 * share) ? light : rest)) })?.is)); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('views of a picture, and the squares in them', () => {
  const told = () =>
    [[300, 200], [320, 320], [321, 300], [700, 3], [1300, 900], [1601, 420]].map(([width = 1, height = 1]) => {
      const light = new Float32Array(width * height).fill(0.8);
      for (const [at, side] of [4, 5, 6, 7, 9, 20, 42, 45, 88, 120].entries()) for (let y = 0; y < side; y++) for (let x = 0; x < side; x++) if (y + 60 < height && 60 + 130 * at + x < width) light[(60 + y) * width + 60 + 130 * at + x + Math.floor(y / 9)] = 0.05;
      const seen = lookAt(wholePicture({ width, height, light }));
      const quads = Array.from({ length: seen.views }, (_, view) => seen.inView(view));
      const between = [10, 19.9, 20, 39.9, 40, 81].map((side) => { const one = seen.between([quadrangle(0, side / 2, side / 2), quadrangle(0, side, side)]); return [one.factor, one.plane.width]; });
      return [seen.views, seen.whole().factor, quads.map((all) => [all.length, summed(all.flat().flatMap(({ x, y }) => [x, y]))]), between];
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

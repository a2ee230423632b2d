// Numbers of the squares of a picture, of the prints they make and of why there is none, kept so that no change of them goes unnoticed.
import { expect, test } from 'vitest';
import { LEANS, markCorners } from '../../src/optics/print/marks.ts';
import { dotsFor } from '../../src/optics/print/dots.ts';
import { arrangementsIn, FLAT, type Spacing } from '../../src/photographs/arrangement.ts';
import { cameraFacts } from '../../src/photographs/cameraFacts.ts';
import { unlit } from '../../src/photographs/findFault.ts';
import { findPrint } from '../../src/photographs/findPrint.ts';
import { readMarks } from '../../src/photographs/fourMarks.ts';
import { homographyFrom, through, type Homography } from '../../src/photographs/homography.ts';
import { wholePicture, type PixelSource } from '../../src/photographs/pixelSource.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import type { Quad } from '../../src/photographs/quad.ts';
import { sharpQuad } from '../../src/photographs/sharpQuad.ts';
import { lookAt, type SquaresSeen } from '../../src/photographs/squaresSeen.ts';
import type { Kit } from '../../src/kit/kit.ts';
import type { Photograph } from '../../src/kit/photograph/photograph.ts';
import { kept } from '../kept/kept.ts';
import { summed } from '../kept/summed.ts';

/** A picture that lists what is asked of it. */
function asked(plane: Plane): { readonly picture: PixelSource; readonly asks: number[] } {
  const [whole, asks] = [wholePicture(plane), [] as number[]];
  return { asks, picture: { ...whole, reduced: (factor) => { asks.push(factor); return whole.reduced(factor); }, around: (box) => { asks.push(...Object.values(box)); return plane; } } }; // prettier-ignore
}

test('views of pictures of odd sizes, and what is asked of the picture for them', () => {
  const told = () =>
    [[800, 600], [801, 600], [1600, 9], [700, 2], [700, 1], [900, 3], [2600, 5], [640, 640], [641, 640]].map(([width = 1, height = 1]) => {
      const { picture, asks } = asked({ width, height, light: new Float32Array(width * height).fill(0.5) });
      const seen = lookAt(picture);
      for (let view = 0; view < seen.views; view++) seen.inView(view);
      seen.inView(0);
      seen.between([[{ x: 3, y: 4 }, { x: 15, y: 5 }, { x: 14, y: 16 }, { x: 2, y: 15 }]]);
      return [seen.views, seen.whole().factor, ...asks];
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('slanted bars, down to such as are too narrow for a mark', () => {
  const told = () =>
    [3, 3.5, 4, 4.5, 5, 6].map((wide) =>
      [6, 7, 8, 9, 11].map((long) => {
        const light = Float32Array.from({ length: 3600 }, (_, at) => {
          const [x, y] = [(at % 60) - 29.3, Math.floor(at / 60) - 30.2];
          return Math.abs(x + y) < (wide * Math.SQRT2) / 2 && Math.abs(x - y) < (long * Math.SQRT2) / 2 ? 0.05 : 0.8;
        });
        const quads = lookAt(wholePicture({ width: 60, height: 60, light })).inView(0);
        return [quads.length, summed(quads.flat().flatMap(({ x, y }) => [x, y]))];
      }),
    );
  expect(kept(told)).toMatchSnapshot();
});

test('corners of squares that are tiny, dim or crooked', () => {
  const told = () =>
    [[1.2, 0.03, 0.4], [1.6, 0.03, 0.4], [2.5, 0.1, 0.9], [9, 0.05, 0.069], [9, 0.05, 0.071], [9, 0.05, 0.08], [9, 0.05, 0.095], [9, 0.5, 0.58], [9, 0.5, 0.6]].map(([half = 1, dark = 0, bright = 1]) => {
      const light = Float32Array.from({ length: 1600 }, (_, at) => (Math.max(Math.abs((at % 40) - 19.3), Math.abs(Math.floor(at / 40) - 20.2)) < half ? dark : bright + 0.0003 * (at % 5)));
      const about = [[-1, -1.1], [1.1, -0.9], [0.9, 1.2], [-1.05, 1]].map(([x = 0, y = 0]) => ({ x: 19.8 + half * x, y: 20.7 + half * y })) as unknown as Quad;
      return [0.1, 0.3].map((reach) => sharpQuad({ width: 40, height: 40, light }, about, reach)?.flatMap(({ x, y }) => [x, y]) ?? null);
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('every seventh pixel tells whether a picture is blown or black', () => {
  const told = (length: number, of: (at: number) => number) =>
    unlit({ width: length, height: 1, light: Float64Array.from({ length }, (_, at) => of(at)) as unknown as Float32Array })?.is ?? null;
  expect([told(70, (at) => (at % 7 === 0 ? 1 : 0.5)), told(70, (at) => (at % 7 === 1 ? 1 : 0.5)), told(63, () => 1)]).toEqual([
    'picture blown',
    null,
    'picture blown',
  ]);
  expect([told(70, () => 0.97), told(70, () => 0.004), told(70, () => 0.0039), told(231, () => 0)]).toEqual([null, null, 'picture black', 'picture black']);
});

const SEEN: Homography = [5, 0.7, 60, -0.5, 4.6, 70, 0.0011, -0.0006, 1];
const PLACES = [[0, 0], [50, 0], [0, 60], [50, 60]] as const; // prettier-ignore
const quads = PLACES.map(([x, y]) =>
  markCorners({ middle: { x, y }, box: 9, lean: LEANS.target }).map((corner) => through(SEEN, corner)),
) as unknown as readonly [Quad, Quad, Quad, Quad];

/** Four marks with these dots, so much smaller than the places they stand at. */
function printed(dots: readonly boolean[], dot = 0.8, smaller = 1): Plane {
  const back = homographyFrom(PLACES.map(([x, y]) => ({ from: through(SEEN, { x, y }), to: { x, y } })))!;
  const [width, height] = [Math.ceil(400 / smaller), Math.ceil(420 / smaller)];
  const [cos, sin] = [Math.cos((LEANS.target * Math.PI) / 180), Math.sin((LEANS.target * Math.PI) / 180)];
  const light = Float32Array.from({ length: width * height }, (_, at) => {
    const { x, y } = through(back, { x: smaller * ((at % width) + 0.5), y: smaller * (Math.floor(at / width) + 0.5) });
    const index = (x > 25 ? 1 : 0) + (y > 30 ? 2 : 0);
    const [left, top] = PLACES[index]!;
    const [u, v] = [(x - left) * cos + (y - top) * sin, (y - top) * cos - (x - left) * sin];
    if (Math.max(Math.abs(u), Math.abs(v)) > 9 / (cos + sin) / 2) return 0.8;
    return dots[4 * index + (v > 0 ? 2 : 0) + (u > 0 ? 1 : 0)] === true && Math.hypot(Math.abs(u) - 1.35, Math.abs(v) - 1.35) < 1 ? dot : 0.05;
  });
  return { width, height, light };
}
const shrunk = (by: number) => quads.map((quad) => quad.map(({ x, y }) => ({ x: x / by, y: y / by }))) as unknown as typeof quads;
const DOTS = dotsFor('target', 77);

test('marks are looked at with so much room around, and read whichever of them are missing', () => {
  const told = () =>
    [DOTS, DOTS.toReversed(), DOTS.map((dot, at) => dot !== (at === 0)), DOTS.map((dot, at) => dot !== (at === 15)), DOTS.map((dot, at) => dot !== (at === 0 || at === 15)), DOTS.map(() => false)].map((dots) =>
      [[], [0], [1], [2], [3], [0, 3]].map((missing) => {
        const { picture, asks } = asked(printed(dots));
        const four = readMarks('target', picture, { quads: quads.map((quad, at) => (missing.includes(at) ? null : quad)) as unknown as typeof quads });
        return [four.are, summed(asks), 'number' in four ? four.number : '', 'quads' in four ? four.quads.map((quad) => (quad ? summed(quad.flatMap(({ x, y }) => [x, y])) : 0)).join(' ') : ''];
      }),
    ); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('the first view that shows a print ends the search, a second one is told, and what came nearest says why there is none', () => {
  const patterns = [{ across: Float64Array.of(0, 1), down: Float64Array.of(0, 1), black: Uint8Array.of(1, 0) }];
  const spacing: Spacing = { kind: 'target', ...FLAT, agrees: -2, patterns: () => patterns, across: [40, 55], down: [55, 70] };
  const find = (plane: Plane, views: readonly (readonly Quad[])[], fit: (number: number) => number | null = (number) => number, spacings = [spacing]) => {
    const seen = { picture: wholePicture(plane), views: views.length, inView: (view: number) => views[view]!, between: () => ({ plane, factor: 1 }), whole: () => ({ plane, factor: 1 }) } as unknown as SquaresSeen; // prettier-ignore
    return kept(() => findPrint(seen, { kind: 'target', spacings, fit }));
  };
  const [good, wrong, grey, small, soft] = [printed(DOTS), printed(DOTS.map((dot, at) => dot !== (at === 6))), printed(DOTS, 0.2), printed(DOTS, 0.2, 2.2), printed(DOTS, 0.2, 2.6)]; // prettier-ignore
  const three = quads.slice(1);
  const even = (light: number): Plane => ({ width: 40, height: 40, light: new Float32Array(1600).fill(light) });
  const shifted = (by: number) => quads.map((quad) => quad.map(({ x, y }) => ({ x: x + by, y: y - by }))) as unknown as typeof quads;
  expect([
    find(good, [quads]), find(good, [[], quads]), find(good, [quads.toReversed(), []]), find(good, [quads], undefined, [spacing, spacing]),
    find(good, [three, quads]), find(good, [three, []]), find(good, [quads.toSpliced(2, 1), quads.toSpliced(1, 1)]), find(good, [quads], () => null),
    find(good, [three, quads], () => null), find(wrong, [quads]), find(grey, [quads]), find(grey, [quads, three]), find(small, [shrunk(2.2)]), find(soft, [shrunk(2.6)]),
    find(good, [[]]), find(even(1), [[]]), find(even(0), [[]]), find(even(0.4), []), find(printed([]), [quads]), ...[2, 4, 8].map((by) => find(good, [[...quads, ...shifted(by)]])), find(even(0.4), [quads]),
  ]).toMatchSnapshot(); // prettier-ignore
});

test('what is known of the camera comes from the photograph first, then from the situation, then from the kit', () => {
  const item = (id: string, model: string) => ({ id, model, serial: null });
  const kit = {
    bodies: [{ ...item('b1', 'One'), sensor: { width: 36, height: 24 } }, { ...item('b2', 'Two'), sensor: null }],
    lenses: [{ ...item('l1', 'Long'), focal: { from: 70, to: 200 }, widest: { from: 2.8, to: 4 } }, { ...item('l2', 'Short'), focal: null, widest: null }],
    situations: [{ id: 's1', body: 'b1', lens: 'l1', focalLength: 100 }, { id: 's2', body: 'b2', lens: 'l2', focalLength: 30 }, { id: 's3', body: 'gone', lens: 'gone', focalLength: 50 }],
  } as unknown as Kit; // prettier-ignore
  const shot = (more: object) =>
    ({ focalLength: null, aperture: null, bodyModel: null, bodySerial: null, lensModel: null, lensSerial: null, ...more }) as unknown as Photograph;
  const photographs = [
    null,
    shot({}),
    shot({ focalLength: 135, aperture: 5.6 }),
    shot({ focalLength: 135, bodyModel: 'One', lensModel: 'Long' }),
    shot({ bodyModel: 'Two', lensModel: 'Short' }),
  ];
  const written = [null, { sensor: { width: 35, height: 23 }, frame: { width: 60, height: 40 } }] as unknown as Parameters<typeof cameraFacts>[1][];
  const told = photographs.flatMap((one) =>
    written.flatMap((own) => [null, 's1', 's2', 's3', 's4'].map((of) => kept(() => JSON.stringify(cameraFacts(one, own, kit, of))))),
  );
  expect(told).toMatchSnapshot();
});

test('marks far below each other, seen narrowed from aside, belong together', () => {
  const patterns = [{ across: Float64Array.of(0), down: Float64Array.of(0), black: Uint8Array.of(1) }];
  const at = [[0, 0], [12, 0], [0, 120], [12, 120]] as const; // prettier-ignore
  const narrow = at.map(([x, y]) =>
    markCorners({ middle: { x, y }, box: 9, lean: LEANS.target }).map((corner) => ({ x: 3.5 * corner.x, y: 5 * corner.y })),
  ) as unknown as Quad[];
  const seen = { inView: () => narrow, between: () => ({ plane: { width: 2, height: 2, light: new Float32Array(4) }, factor: 1 }) } as unknown as SquaresSeen;
  const all = arrangementsIn(seen, 0, { kind: 'target', ...FLAT, agrees: -2, patterns: () => patterns, across: [11, 12], down: [110, 120] });
  expect(all.map(({ quads: four }) => four.filter((quad) => quad !== null).length)).toContain(4);
});

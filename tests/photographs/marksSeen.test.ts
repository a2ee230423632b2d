// Contracts of what is read of a mark: light between pixels, the corners of a square made sharp, its dots told apart, what does not fit left out.
import { describe, expect, test } from 'vitest';
import { edgeBlur } from '../../src/photographs/edgeBlur.ts';
import { homographyFrom, robustHomography, through, type PointPair } from '../../src/photographs/homography.ts';
import { dotLights, tellDots } from '../../src/photographs/markDots.ts';
import { normalBelow } from '../../src/photographs/normalCurve.ts';
import { agrees, type Pattern } from '../../src/photographs/pattern.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import type { Quad } from '../../src/photographs/quad.ts';
import { lightAt, sharpQuad } from '../../src/photographs/sharpQuad.ts';

const painted = (width: number, height: number, light: (x: number, y: number) => number): Plane => ({
  width,
  height,
  light: Float32Array.from({ length: width * height }, (_, at) => light((at % width) + 0.5, Math.floor(at / width) + 0.5)),
});

test('light between pixels is that of the four nearest, and at the border that of the outermost', () => {
  const plane: Plane = { width: 3, height: 2, light: Float32Array.of(0, 1, 2, 10, 11, 12) };
  const at = (x: number, y: number): number => lightAt(plane, { x, y });
  expect([at(0.5, 0.5), at(1, 0.5), at(1.75, 0.5), at(0.5, 1), at(1.25, 1.25)]).toEqual([0, 0.5, 1.25, 5, 8.25]);
  expect([at(-3, 0.5), at(9, 0.5), at(0.5, -3), at(2.5, 9)]).toEqual([0, 2, 0, 12]);
});

describe('the corners of a square', () => {
  /** A black square on white, its sides soft by 0.8 pixels, from 20 to 50 across and 15 to 45 down. */
  const soft = (dark: number, bright: number): Plane =>
    painted(70, 60, (x, y) => {
      const inside = (normalBelow((x - 20) / 0.8) - normalBelow((x - 50) / 0.8)) * (normalBelow((y - 15) / 0.8) - normalBelow((y - 45) / 0.8));
      return bright - (bright - dark) * inside;
    });
  const quad = (off: number): Quad => [
    { x: 20 + off, y: 15 - off },
    { x: 50 + off, y: 15 + off },
    { x: 50 - off, y: 45 + off },
    { x: 20 - off, y: 45 - off },
  ];

  test.each([0, 1, -1.5])('are found to a twentieth of a pixel from %s pixels off', (off) => {
    const found = sharpQuad(soft(0.05, 0.9), quad(off), 0.15);
    for (const [corner, { x, y }] of quad(0).entries()) {
      expect(found?.[corner]?.x).toBeGreaterThan(x - 0.05);
      expect(found?.[corner]?.x).toBeLessThan(x + 0.05);
      expect(found?.[corner]?.y).toBeGreaterThan(y - 0.05);
      expect(found?.[corner]?.y).toBeLessThan(y + 0.05);
    }
  });

  test('are none where white is not brighter than black by 0.15 of it, or by 0.02', () => {
    const found = (dark: number, bright: number) => sharpQuad(soft(dark, bright), quad(0), 0.15) !== null;
    expect([found(0.78, 0.9), found(0.74, 0.9)]).toEqual([false, true]);
    expect([found(0, 0.018), found(0, 0.022)]).toEqual([false, true]);
    expect(found(0.9, 0.1)).toBe(false);
  });

  test('are none where nothing is', () => {
    expect(
      sharpQuad(
        painted(70, 60, () => 0.5),
        quad(0),
        0.15,
      ),
    ).toBeNull();
  });
});

describe('dots', () => {
  test('are white above the middle of the lightest and the darkest, and none sure near it', () => {
    expect(tellDots([0, 1, 0.63, 0.37])).toEqual({ are: 'read', dots: [false, true, true, false] });
    expect(tellDots([0, 1, 0.61, 0.3])).toEqual({ are: 'unsure' });
    expect(tellDots([0, 1, 0.39])).toEqual({ are: 'unsure' });
    expect(tellDots([0.2, 0.4, 0.328])).toMatchObject({ are: 'read' });
    expect(tellDots([0.2, 0.4, 0.32])).toEqual({ are: 'unsure' });
  });

  test('are none where all is black, and not sure where the lightest is grey', () => {
    expect([tellDots([0, 0.11]), tellDots([0, 0.12]), tellDots([0, 0.29]), tellDots([0, 0.3])].map(({ are }) => are)).toEqual([
      'none',
      'unsure',
      'unsure',
      'read',
    ]);
  });
});

describe('a mapping', () => {
  const truth = ({ x, y }: { x: number; y: number }) => {
    const w = 0.001 * x - 0.002 * y + 1;
    return { x: (2 * x + 0.3 * y + 5) / w, y: (-0.2 * x + 1.5 * y - 7) / w };
  };
  const pairs: PointPair[] = Array.from({ length: 12 }, (_, at) => ({ x: 30 * (at % 4), y: 25 * Math.floor(at / 4) })).map((from) => ({
    from,
    to: truth(from),
  }));
  const off = (at: number, by: number): PointPair[] => pairs.map((pair, index) => (index === at ? { ...pair, to: { x: pair.to.x + by, y: pair.to.y } } : pair));

  test('goes through the pairs that it is made from', () => {
    const made = homographyFrom(pairs.slice(0, 8))!;
    for (const { from, to } of pairs) {
      expect(through(made, from).x).toBeCloseTo(to.x, 6);
      expect(through(made, from).y).toBeCloseTo(to.y, 6);
    }
    expect(homographyFrom(pairs.slice(0, 3))).toBeNull();
    expect(homographyFrom(pairs.slice(0, 4))).toBeNull();
    expect(homographyFrom(pairs.map(({ to }) => ({ from: { x: 1, y: 1 }, to })))).toBeNull();
  });

  test('leaves out the pair that fits worst, until all that are left fit', () => {
    expect(robustHomography(pairs, 0.5)?.kept).toEqual(pairs);
    const kept = robustHomography(off(5, 9), 0.5);
    expect(kept?.kept).toEqual(pairs.filter((_, index) => index !== 5));
    expect(through(kept!.homography, pairs[5]!.from).x).toBeCloseTo(pairs[5]!.to.x, 6);
  });

  test('is none where fewer than eight pairs, or six tenths of them, fit', () => {
    const wild = (count: number) => pairs.map((pair, index) => (index < count ? { ...pair, to: { x: pair.to.y * 3 + 40 * index, y: 90 - pair.to.x } } : pair));
    expect(robustHomography(off(5, 9).slice(0, 8), 0.5)?.kept).toHaveLength(7);
    expect(robustHomography(wild(6), 0.5)).toBeNull();
  });
});

describe('a pattern', () => {
  const cells = Array.from({ length: 64 }, (_, at) => ({
    x: ((at % 8) + 0.5) / 8,
    y: (Math.floor(at / 8) + 0.5) / 8,
    black: (at * 7 + Math.floor(at / 8)) % 3 === 0 ? 1 : 0,
  }));
  const pattern: Pattern = {
    across: Float64Array.from(cells, ({ x }) => x),
    down: Float64Array.from(cells, ({ y }) => y),
    black: Uint8Array.from(cells, ({ black }) => black),
  };
  const blackAt = (x: number, y: number): boolean => cells[8 * Math.min(7, Math.floor(y / 10)) + Math.min(7, Math.floor(x / 10))]?.black === 1;
  const shown = painted(80, 80, (x, y) => (blackAt(x, y) ? 0.1 : 0.8));
  const half = painted(80, 80, (x, y) => (blackAt(80 - x, 80 - y) ? 0.1 : 0.8));
  const where = [80, 0, 0, 0, 80, 0, 0, 0, 1] as const;

  test('agrees wholly with what shows it, and not with its negative, nor with even light', () => {
    expect(agrees(shown, where, pattern, false, 0.999)).toBe(true);
    expect(agrees(shown, where, pattern, false, 1.001)).toBe(false);
    expect(
      agrees(
        painted(80, 80, (x, y) => (blackAt(x, y) ? 0.8 : 0.1)),
        where,
        pattern,
        false,
        -0.9,
      ),
    ).toBe(false);
    expect(
      agrees(
        painted(80, 80, () => 0.5),
        where,
        pattern,
        false,
        0,
      ),
    ).toBe(false);
    expect(
      agrees(
        painted(80, 80, () => 0.5),
        where,
        pattern,
        false,
        -0.1,
      ),
    ).toBe(true);
  });

  test('is seen half a turn round where that is asked for', () => {
    expect([agrees(half, where, pattern, true, 0.999), agrees(half, where, pattern, false, 0.6)]).toEqual([true, false]);
  });
});

describe('the blur of a short piece of an edge', () => {
  const edge = (spread: number, off = 0, contrast = 0.7): Plane => painted(80, 60, (x) => 0.1 + contrast * normalBelow((x - 40 - off) / spread));
  const piece = { middle: { x: 40, y: 30 }, along: { x: 0, y: -1 }, halfLength: 10, room: 25 };

  test.each([0.8, 2, 4])('of %s pixels is found, with its place and its contrast', (spread) => {
    const found = edgeBlur(edge(spread, 0.6), piece)!;
    expect(found.spread).toBeCloseTo(spread, 2);
    // Across it, to the right of the way up.
    expect(found.off).toBeCloseTo(0.6, 2);
    expect(found.contrast).toBeCloseTo(0.7, 2);
    expect(found.blown).toBe(0);
    expect(found.uncertain).toBeLessThan(0.01 * spread);
  });

  test('is the same along a level edge, and falling', () => {
    const level = painted(80, 80, (_, y) => 0.8 - 0.7 * normalBelow((y - 40.5) / 2));
    const found = edgeBlur(level, { ...piece, middle: { x: 40, y: 40 }, along: { x: 1, y: 0 } })!;
    expect([found.spread, found.off, found.contrast]).toEqual([2, 0.5, 0.7].map((value) => expect.closeTo(value, 2)));
  });

  test('is none without contrast, without room, or where another edge is meant', () => {
    expect(edgeBlur(edge(2, 0, 0.019), piece)).toBeNull();
    expect(edgeBlur(edge(2, 0, 0.022), piece)).not.toBeNull();
    expect(edgeBlur(edge(2), { ...piece, halfLength: 0.4, room: 4 })).toBeNull();
    expect(edgeBlur(edge(2, 11), piece)).toBeNull();
  });

  test('tells the share that is blown out', () => {
    const found = edgeBlur(edge(1, 0, 0.9), piece)!;
    expect(found.blown).toBeGreaterThan(0.29);
    expect(found.blown).toBeLessThan(0.5);
    expect(edgeBlur(edge(1, 0, 0.865), piece)?.blown).toBe(0);
  });
});

test('dots lie between the mean of the black in the four corners of a mark and of the white on its four sides', () => {
  // Ten pixels to a unit: half a side is 4.154 units. Dots of 1.35 units off the middle, here squares of two units.
  const half = 41.54;
  const seen = (ground: readonly [below: number, above: number, right: number, left: number], ink: readonly [number, number, number, number]) =>
    painted(120, 120, (column, row) => {
      const [x, y] = [column - 60, row - 60];
      if (Math.max(Math.abs(x), Math.abs(y)) > half) return Math.abs(y) > Math.abs(x) ? ground[y > 0 ? 0 : 1] : ground[x > 0 ? 2 : 3];
      const quarter = (y > 0 ? 2 : 0) + (x > 0 ? 1 : 0);
      const onDot = Math.abs(Math.abs(x) - 13.5) < 10 && Math.abs(Math.abs(y) - 13.5) < 10;
      return onDot ? [0.75, 0.05, 0.4, 0.19][quarter]! : ink[quarter]!;
    });
  const corners: Quad = [
    { x: 60 - half, y: 60 - half },
    { x: 60 + half, y: 60 - half },
    { x: 60 + half, y: 60 + half },
    { x: 60 - half, y: 60 + half },
  ];
  const shares = [1, 0, 0.5, 0.2].map((share) => expect.closeTo(share, 5));
  expect(dotLights(seen([0.6, 0.7, 0.8, 0.9], [0.02, 0.04, 0.06, 0.08]), corners)).toEqual(shares);
  // From another corner the same dots, each a quarter turn on.
  expect(dotLights(seen([0.6, 0.7, 0.8, 0.9], [0.02, 0.04, 0.06, 0.08]), [corners[1], corners[2], corners[3], corners[0]])).toEqual(
    [0, 0.2, 1, 0.5].map((share) => expect.closeTo(share, 5)),
  );
  const flat = (white: number) => dotLights(seen([white, white, white, white], [0.3, 0.3, 0.3, 0.3]), corners);
  expect([flat(0.319), flat(0.321) !== null, flat(0.2)]).toEqual([null, true, null]);
});

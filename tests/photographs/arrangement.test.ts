// Contract of the arrangements: squares that stand to each other as four marks do, one of them perhaps missing, and nothing else. Marks of nine
// units stand 50 apart across and 60 down, five pixels a unit.
import { describe, expect, test } from 'vitest';
import { LEANS, MARK_BOX, markCorners } from '../../src/optics/print/marks.ts';
import type { Point } from '../../src/optics/print/drawing.ts';
import { arrangementsIn, FLAT, type Spacing } from '../../src/photographs/arrangement.ts';
import { turnedQuad } from '../../src/photographs/frame.ts';
import type { Quad } from '../../src/photographs/quad.ts';
import type { SquaresSeen } from '../../src/photographs/squaresSeen.ts';

const UNIT = 5;
type Seen = (point: Point) => Point;
const asIs: Seen = ({ x, y }) => ({ x: 100 + x, y: 80 + y });

/** A mark so many units across and down, as it is seen. */
function mark(x: number, y: number, { size = 1, lean = 0, seen = asIs, first = 0 } = {}): Quad {
  const corners = markCorners({ middle: { x: UNIT * x, y: UNIT * y }, box: UNIT * size * MARK_BOX, lean: (LEANS.target + lean) as typeof LEANS.target });
  return turnedQuad(corners.map(seen) as unknown as Quad, first);
}
const FOUR = [mark(0, 0), mark(50, 0), mark(0, 60), mark(50, 60)] as const;

/** What lies between is not looked at: anything agrees. */
const SPACING: Spacing = {
  kind: 'target',
  ...FLAT,
  agrees: -2,
  patterns: () => [{ across: new Float64Array(1), down: new Float64Array(1), black: new Uint8Array(1) }],
  across: [40, 60],
  down: [50, 70],
};
const found = (quads: readonly Quad[], spacing: Partial<Spacing> = {}) => {
  const seen = { inView: () => quads, between: () => ({ plane: { width: 2, height: 2, light: new Float32Array(4) }, factor: 1 }) } as unknown as SquaresSeen;
  return arrangementsIn(seen, 0, { ...SPACING, ...spacing });
};
/** The middles in units, or nothing. */
const middles = (quads: readonly Quad[]) =>
  found(quads).map(({ quads: four }) =>
    four.map(
      (quad) => quad && [quad[0], quad[2]].reduce((sum, { x, y }) => [sum[0]! + (x - 100) / 2 / UNIT, sum[1]! + (y - 80) / 2 / UNIT], [0, 0]).map(Math.round),
    ),
  );
const WHOLE = [[0, 0], [50, 0], [0, 60], [50, 60]]; // prettier-ignore

describe('four marks', () => {
  test('are one arrangement, row by row, whatever order they come in', () => {
    for (const quads of [FOUR, FOUR.toReversed()]) {
      const all = middles(quads);
      expect(all).toHaveLength(1);
      // Half a turn is left open.
      expect([WHOLE, WHOLE.toReversed()]).toContainEqual(all[0]);
    }
  });

  test('have the same corner first, wherever each begins', () => {
    const [one] = found([mark(0, 0), mark(50, 0, { first: 1 }), mark(0, 60, { first: 2 }), mark(50, 60, { first: 3 })]);
    const offs = one!.quads.map((quad) => [quad![0].x - quad![2].x, quad![0].y - quad![2].y].map(Math.round));
    expect(new Set(offs.map(String)).size).toBe(1);
  });

  test('are found however the print is turned and stretched', () => {
    const turned: Seen = ({ x, y }) => ({ x: 400 + 0.8 * x - 0.5 * y, y: 100 + 0.5 * x + 0.8 * y });
    expect(found([mark(0, 0, { seen: turned }), mark(50, 0, { seen: turned }), mark(0, 60, { seen: turned }), mark(50, 60, { seen: turned })])).toHaveLength(1);
    const flat: Seen = ({ x, y }) => ({ x: 100 + x, y: 80 + 0.6 * y });
    expect(found([mark(0, 0, { seen: flat }), mark(50, 0, { seen: flat }), mark(0, 60, { seen: flat }), mark(50, 60, { seen: flat })])).toHaveLength(1);
  });

  test('come whole before those that lack one', () => {
    expect(middles(FOUR.slice(0, 3))).toEqual([[[0, 0], [50, 0], [0, 60], null]]); // prettier-ignore
    const more = found([...FOUR, mark(200, 0), mark(250, 0), mark(200, 60)]);
    expect(more.map(({ quads }) => quads.filter((quad) => quad === null).length)).toEqual([0, 1]);
    expect(middles(FOUR.slice(0, 2))).toEqual([]);
  });
});

describe('what is no mark of the same print', () => {
  const withFourth = (fourth: Quad): boolean => found([...FOUR.slice(0, 3), fourth])[0]?.quads.every((quad) => quad !== null) ?? false;

  test('is one of another size or lean: its corners are off by 0.34 half sides', () => {
    expect([1.35, 1.22, 0.78, 0.7].map((size) => withFourth(mark(50, 60, { size })))).toEqual([false, true, true, false]);
    expect([12, 20, -12, -20].map((lean) => withFourth(mark(50, 60, { lean })))).toEqual([true, false, true, false]);
  });

  test('is one that lies elsewhere than the other three say: by 0.06 of the way across', () => {
    // The way is 78.1 units: 4.69.
    expect([mark(54, 60), mark(50, 64), mark(56, 60), mark(50, 54)].map(withFourth)).toEqual([true, true, false, false]);
  });

  test('is farther off than the nearest of two', () => {
    expect(middles([...FOUR, mark(52, 62)])[0]).toEqual(expect.arrayContaining([[50, 60]]));
  });

  test('stands too near or too far, by 0.11 more than any print has', () => {
    const across = (apart: number) => middles([mark(0, 0), mark(apart, 0), mark(0, 75), mark(apart, 75)]).length;
    expect([35, 36, 66, 67].map(across)).toEqual([0, 1, 1, 0]);
    const down = (apart: number) => middles([mark(0, 0), mark(40, 0), mark(0, apart), mark(40, apart)]).length;
    expect([44, 45, 77, 78].map(down)).toEqual([0, 1, 1, 0]);
  });

  test('stands askew by more than 0.11', () => {
    const askew = (by: number) => middles([mark(0, 0), mark(50, by), mark(0, 60), mark(50, 60 + by)]).length;
    expect([5, 6].map(askew)).toEqual([1, 0]);
    const aslant = (by: number) => middles([mark(0, 0), mark(50, 0), mark(by, 60), mark(50 + by, 60)]).length;
    expect([6, 7].map(aslant)).toEqual([1, 0]);
  });
});

test('what a picture does not show between them is none', () => {
  expect(found(FOUR, { agrees: 0.5 })).toEqual([]);
});

test('a picture full of squares in rows is given up after 300 arrangements', () => {
  const many = Array.from({ length: 144 }, (_, at) => mark(50 * (at % 12), 60 * Math.floor(at / 12)));
  expect(found(many, { across: [40, 110], down: [50, 130] }).length).toBe(300);
});

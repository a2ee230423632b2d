// Contract of the alignment: the way on which two shapes are nearest, what it costs on the mean, and where one of them stands still.
// All worked out by hand on shapes of one number a row.
import { expect, test } from 'vitest';
import { align } from '../../../src/voice/ownWords/alignment.ts';
import type { Cepstra } from '../../../src/voice/ownWords/cepstra.ts';

const shape = (...rows: number[]): Cepstra => ({ values: Float32Array.from(rows), length: rows.length, width: 1 });

// Room for far more than the shapes below: a way that leaves them then comes upon nought, and is told instead of followed for ever.
align(shape(), { values: new Float32Array(30_000), length: 30_000, width: 1 });

test('the same shape lies on itself, row by row', () => {
  const found = align(shape(0, 1, 2), shape(0, 1, 2));
  expect(found).toMatchObject({ apart: 0, warped: 0, way: [8, 4, 0] });
  expect([...found.along]).toEqual([0, 0, 0]);
});

test('a row that lasts longer stands still on one of the other, whichever is the longer', () => {
  expect(align(shape(0, 0, 5), shape(0, 5))).toMatchObject({ apart: 0, warped: 1 / 3, way: [5, 2, 0] });
  expect(align(shape(0, 5), shape(0, 0, 5))).toMatchObject({ apart: 0, warped: 1 / 3, way: [5, 1, 0] });
});

test('what is apart by as much everywhere is apart by that on the mean', () => {
  const found = align(shape(0, 0, 0), shape(3, 3, 3));
  expect(found.apart).toBe(3);
  expect([...found.along]).toEqual([3, 3, 3]);
});

test('rows are apart as the crow flies', () => {
  const wide = (...values: number[]): Cepstra => ({ values: Float32Array.from(values), length: values.length / 2, width: 2 });
  expect(align(wide(0, 0), wide(3, 4)).apart).toBe(5);
});

test('one row that differs counts twice on the diagonal, of six', () => {
  expect(align(shape(0, 50, 0), shape(0, 53, 0)).apart).toBeCloseTo(1, 6);
});

test('a step to the side costs once: 1 of the 5 that the way weighs', () => {
  // 0 on 0, then 9 on 9 by the diagonal; 8 stands beside 9 and is one apart.
  expect(align(shape(0, 9, 8), shape(0, 9))).toMatchObject({ apart: 0.2, warped: 1 / 3 });
});

test('up to a quarter of the rows may be left out at the ends at no cost, and no more', () => {
  const rising = [1, 2, 3, 4, 5, 6, 7, 8, 9];
  const three = align(shape(100, 100, 100, ...rising), shape(...rising, -50, -50, -50));
  expect(three.apart).toBe(0);
  expect([...three.along].slice(0, 4)).toEqual([Infinity, Infinity, Infinity, 0]);
  const eight = rising.slice(0, 8);
  expect(align(shape(100, 100, 100, 100, ...eight), shape(...eight, -50, -50, -50, -50)).apart).toBeGreaterThan(1);
  // The other way round, and never more than 14.
  expect(align(shape(...rising, -50, -50, -50), shape(100, 100, 100, ...rising)).apart).toBe(0);
  const long = Array.from({ length: 60 }, (_, t) => t);
  const noise = (rows: number, value: number) => Array.from({ length: rows }, () => value);
  expect(align(shape(...noise(14, 500), ...long), shape(...long, ...noise(14, -500))).apart).toBe(0);
  expect(align(shape(...noise(15, 500), ...long), shape(...long, ...noise(15, -500))).apart).toBeGreaterThan(0.5);
});

test('a way strays from the straight one by 0.35 of the longer shape, by 8 rows, or by the rows that one has more and two, whichever is most', () => {
  /** So many rows, of which those from a moment on are others: alike where the way may go by the two moments. */
  const turning = (rows: number, turn: number): Cepstra => shape(...Array.from({ length: rows }, (_, t) => (t < turn ? 0 : 1)));
  const apart = (n: number, turn: number, m: number, other: number) => align(turning(n, turn), turning(m, other)).apart;
  const strays = (n: number, turn: number, m: number, other: number) => [apart(n, turn, m, other) === 0, apart(n, turn, m, other + 1) === 0];
  expect(strays(100, 30, 100, 30 + 35)).toEqual([true, false]);
  expect(strays(20, 6, 20, 6 + 8)).toEqual([true, false]);
  expect(strays(100, 30, 80, 24 + 35)).toEqual([true, false]);
  expect(strays(80, 24, 100, 30 + 35)).toEqual([true, false]);
  expect(strays(20, 2, 60, 6 + 42)).toEqual([true, false]);
});

test('a short way is weighed as 0.6 of both lengths at least, so that a part is not nearer than the whole', () => {
  // Eight rows each may begin and end two later: on the diagonal six rows remain, which weigh 12; 0.6 of 16 is 9.6.
  expect(align(shape(0, 0, 0, 0, 0, 0, 0, 0), shape(2, 2, 2, 2, 2, 2, 2, 2)).apart).toBe(2);
});

test('what came before leaves nothing behind in a shorter one', () => {
  align(shape(...Array.from({ length: 30 }, (_, t) => t)), shape(...Array.from({ length: 30 }, (_, t) => -t)));
  expect(align(shape(0, 1, 2), shape(0, 1, 2)).way).toEqual([8, 4, 0]);
});

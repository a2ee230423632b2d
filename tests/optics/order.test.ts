import { expect, test } from 'vitest';
import { readOrder, writeOrder, type TargetOrder } from '../../src/optics/print/order.ts';

const ORDER = {
  magnification: 0.02,
  pitch: 0.005,
  area: 2,
  sensor: { width: 36, height: 24 },
  depth: 100,
  words: ['one'],
  paper: 'A4',
} as unknown as TargetOrder;
const read = (changed: object): boolean => readOrder(encodeURIComponent(JSON.stringify({ ...ORDER, ...changed }))) !== null;

test('an order comes back from the address as it was written', () => {
  expect(readOrder(writeOrder(ORDER))).toEqual(ORDER);
  expect([readOrder('%'), readOrder('{'), readOrder('')]).toEqual([null, null, null]);
});

test('what no camera has and no page holds is no order', () => {
  expect([{ pitch: 0.0004 }, { pitch: 0.0005 }, { pitch: 0.05 }, { pitch: 0.051 }].map(read)).toEqual([false, true, true, false]);
  expect([{ area: 0.09 }, { area: 0.1 }, { area: 50 }, { area: 51 }].map(read)).toEqual([false, true, true, false]);
  expect([{ depth: -1 }, { depth: 0 }, { depth: null }, { depth: 1_000_000 }, { depth: 1_000_001 }].map(read)).toEqual([false, true, true, true, false]);
  const words = (count: number, length: number) => ({ words: Array.from({ length: count }, () => 'x'.repeat(length)) });
  expect([words(8, 200), words(9, 1), words(1, 201), words(0, 0)].map(read)).toEqual([true, false, false, true]);
});

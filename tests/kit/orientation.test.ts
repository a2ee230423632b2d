import { expect, it } from 'vitest';
import { turnOf } from '../../src/kit/photograph/orientation.ts';

/** Where a corner of a stored picture of 6 by 4 is seen. */
function seen(orientation: number, x: number, y: number): [number, number] {
  const [a, b, c, d, e, f] = turnOf(orientation, { width: 6, height: 4 }).matrix;
  return [a * x + c * y + e, b * x + d * y + f];
}

// CIPA DC-008, Orientation: the visual side on which the first row and the first column lie.
it.each([
  [1, 'top', 'left'],
  [2, 'top', 'right'],
  [3, 'bottom', 'right'],
  [4, 'bottom', 'left'],
  [5, 'left', 'top'],
  [6, 'right', 'top'],
  [7, 'right', 'bottom'],
  [8, 'left', 'bottom'],
] as const)('orientation %i has its first row at the %s and its first column at the %s', (orientation, row, column) => {
  const { frame } = turnOf(orientation, { width: 6, height: 4 });
  expect(frame).toEqual(orientation < 5 ? { width: 6, height: 4 } : { width: 4, height: 6 });
  const sides = ([[x, y], [u, v]]: [[number, number], [number, number]]): string[] => [
    ...(x === u ? [x === 0 ? 'left' : 'right'] : []),
    ...(y === v ? [y === 0 ? 'top' : 'bottom'] : []),
  ];
  expect(sides([seen(orientation, 0, 0), seen(orientation, 6, 0)])).toEqual([row]);
  expect(sides([seen(orientation, 0, 0), seen(orientation, 0, 4)])).toEqual([column]);
});

it('an orientation that is none leaves the picture as it is', () => expect(turnOf(0, { width: 6, height: 4 })).toEqual(turnOf(1, { width: 6, height: 4 })));

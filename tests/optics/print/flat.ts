// Drawings as rows of numbers for a snapshot: each shape on one line where they are few, sums of them where they are many.
import type { Shape } from '../../../src/optics/print/drawing.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { summed } from '../../kept/summed.ts';

function numbersOf(shape: Shape): number[] {
  switch (shape.kind) {
    case 'rectangle':
      return [shape.at.x, shape.at.y, shape.width, shape.height];
    case 'polygon':
      return shape.corners.flatMap(({ x, y }) => [x, y]);
    case 'disc':
      return [shape.middle.x, shape.middle.y, shape.radius];
    case 'text':
      return [shape.at.x, shape.at.y, shape.size];
  }
}

const nameOf = (shape: Shape): string =>
  shape.kind === 'text' ? `text ${shape.from} "${shape.text}"` : `${shape.kind} ${shape.kind === 'disc' ? '' : shape.ink}`;

export const flat = (shapes: readonly Shape[]): string[] => shapes.map((shape) => `${nameOf(shape)} ${String(sevenDigits(numbersOf(shape)))}`);

/** How many, and the sum of all numbers, each weighted by its place. */
export const weighed = (numbers: readonly number[]): string => String(sevenDigits([numbers.length, summed(numbers)]));

export const summedShapes = (shapes: readonly Shape[]): string =>
  [0, 1, 2, 3].map((place) => weighed(shapes.map((shape) => numbersOf(shape)[place] ?? 0))).join(' | ');

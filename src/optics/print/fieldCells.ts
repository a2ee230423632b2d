// The field of bars as a grid, for comparing a picture with it: taken from the drawing itself.
import { millimetres } from '../../units.ts';
import { mosaic } from './mosaic.ts';
import type { BarCount } from './sequence.ts';

/** Row by row, a cell a bar wide and high each; true is black. */
export function fieldCells(bars: BarCount): Uint8Array {
  const cells = new Uint8Array(bars * bars);
  for (const shape of mosaic(bars, millimetres(1), 0, 0)) {
    if (shape.kind !== 'rectangle') continue;
    for (let row = 0; row < Math.round(shape.height); row++) {
      const start = (Math.round(shape.at.y) + row) * bars + Math.round(shape.at.x);
      cells.fill(1, start, start + Math.round(shape.width));
    }
  }
  return cells;
}

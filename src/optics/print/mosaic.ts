// The field the AF area looks at: lanes of upright and of level bars take turns, so that line detectors of either
// direction find edges wherever they lie, and neither averages the other's bars away. Bars and lanes are both
// aperiodic.
import type { Millimetres } from '../../units.ts';
import { rectangle, type Shape } from './drawing.ts';
import { barSequence, laneEdges, type BarCount } from './sequence.ts';

/** A square field with its upper left corner at `left`, `top`. */
export function mosaic(count: BarCount, bar: Millimetres, left: number, top: number): Shape[] {
  const across = barSequence(count);
  // Read backwards downwards, and the lanes too: the field must not be its own mirror image over the diagonal.
  const down = across.toReversed();
  const columns = laneEdges(count);
  const rows = columns.map((edge) => count - edge).toReversed();
  const shapes: Shape[] = [];
  for (const [row, [upper, lower]] of pairs(rows).entries()) {
    for (const [column, [start, end]] of pairs(columns).entries()) {
      const upright = (row + column) % 2 === 0;
      const runs = upright ? blackRuns(across, start, end) : blackRuns(down, upper, lower);
      for (const [from, to] of runs) {
        const [x, y] = upright ? [from, upper] : [start, from];
        const [width, height] = upright ? [to - from, lower - upper] : [end - start, to - from];
        shapes.push(rectangle(left + x * bar, top + y * bar, width * bar, height * bar));
      }
    }
  }
  return shapes;
}

/** Stretches of black between two bars of the row: start and end. */
function blackRuns(bars: readonly boolean[], from: number, to: number): [number, number][] {
  const runs: [number, number][] = [];
  for (let index = from; index < to; index++) {
    if (bars[index] !== true) continue;
    const last = runs.at(-1);
    if (last && last[1] === index) last[1] = index + 1;
    else runs.push([index, index + 1]);
  }
  return runs;
}

const pairs = (edges: readonly number[]): [number, number][] => edges.slice(1).map((edge, index): [number, number] => [edges[index] ?? 0, edge]);

// A picture that was moved while it was taken is blurred one way and not the other: edges across the way it moved lose sharpness, those along
// it keep it. In the middle of the picture focus alone blurs both ways alike; away from it a lens may do the same as motion.
import type { EdgeMeasure } from './edge.ts';

export type MotionWay = 'sideways' | 'up and down';

export type Motion =
  | { readonly is: 'alike' }
  /** Blurred along this way; `ratio` is the finer sharpness over the coarser. */
  | { readonly is: 'moved'; readonly way: MotionWay; readonly ratio: number }
  /** There are no edges both ways. */
  | { readonly is: 'not told' };

/** Ratio from which a difference is told (common practice, no source). */
const TOLD = 1.25;

/** Of edges in the middle of one picture. */
export function motionIn(edges: readonly EdgeMeasure[]): Motion {
  const upright = sharpnessOf(edges.filter((edge) => edge.runs === 'upright'));
  const level = sharpnessOf(edges.filter((edge) => edge.runs === 'level'));
  if (upright === null || level === null) return { is: 'not told' };
  const apart = Math.abs(upright.log - level.log);
  if (apart < Math.log(TOLD) || apart <= Math.sqrt(upright.half ** 2 + level.half ** 2)) return { is: 'alike' };
  return { is: 'moved', way: upright.log < level.log ? 'sideways' : 'up and down', ratio: Math.exp(apart) };
}

/** Mean of the logarithms, and half of its interval: what the edges' own intervals say, or their scatter where that says more. */
function sharpnessOf(edges: readonly EdgeMeasure[]): { readonly log: number; readonly half: number } | null {
  const count = edges.length;
  if (count === 0) return null;
  const mean = (of: (edge: EdgeMeasure) => number): number => edges.reduce((sum, edge) => sum + of(edge), 0) / count;
  const log = mean((edge) => Math.log(edge.mtf50));
  const own = Math.sqrt(mean((edge) => (Math.log(edge.interval.high / edge.interval.low) / 2) ** 2) / count);
  const scatter = count === 1 ? 0 : 2 * Math.sqrt(mean((edge) => (Math.log(edge.mtf50) - log) ** 2) / (count - 1));
  return { log, half: Math.max(own, scatter) };
}

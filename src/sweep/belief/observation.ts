// The outcomes of one hold as the belief counts them. Without arrows there are four: in, and three grades of out.
// With arrows each grade of out splits by the side the arrow told. A verdict that leaves grade or side untold
// stands for several of them.
import type { Grade, Reading, Side } from '../verdict.ts';

/** Grades of out, from close to the band to far from it. */
export const GRADES = ['near', 'flicker', 'dark'] as const satisfies readonly Grade[];
const SIDES = ['above', 'below'] as const satisfies readonly Side[];

/** The index of the outcome "in"; the out outcomes follow it, grade by grade, side by side. */
export const IN = 0;

export const outcomeCount = (arrows: boolean): number => 1 + GRADES.length * (arrows ? SIDES.length : 1);

/** Which outcomes a reading allows, as indices for the grid. */
export function outcomesOf(reading: Reading, arrows: boolean): number[] {
  if (reading.counts === 'in') return [IN];
  const grades = GRADES.flatMap((grade, index) => (reading.grade === grade || reading.grade === 'untold' ? [index] : []));
  if (!arrows) return grades.map((grade) => 1 + grade);
  const sides = SIDES.flatMap((side, index) => (reading.side === side || reading.side === 'untold' ? [index] : []));
  return grades.flatMap((grade) => sides.map((side) => 1 + grade * SIDES.length + side));
}

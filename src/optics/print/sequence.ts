// The order of black and white. Phase detection compares two views of the target by sliding one over the other, so a
// pattern that repeats lets it lock one period off. A maximum-length sequence has the flattest autocorrelation a row
// of bars can have: one peak, and -1 at every other shift round the circle (S. W. Golomb, Shift Register Sequences,
// 1967). Printed once, not round a circle, its worst side peak depends on where it starts; the best start is taken.

/** Bars in a row: 2^n - 1 for a shift register of n stages. */
export type BarCount = 31 | 63 | 127;
export const BAR_COUNTS: readonly BarCount[] = [31, 63, 127];

/** Stages and the second tap of a primitive trinomial: x^5 + x^2 + 1, x^6 + x + 1, x^7 + x + 1. */
const REGISTERS: Record<BarCount, readonly [stages: number, tap: number]> = { 31: [5, 2], 63: [6, 1], 127: [7, 1] };

/** Edges between lanes of bars, in bars: Golomb rulers, in which no distance comes twice (found by search). */
const LANES: Record<BarCount, readonly number[]> = {
  31: [4, 6, 5, 7, 9],
  63: [8, 9, 10, 11, 12, 13],
  127: [15, 16, 17, 18, 19, 20, 22],
};

/** True is black. One whole period, from the start that gives the smallest side peak. */
export function barSequence(count: BarCount): boolean[] {
  const round = fullPeriod(count);
  let best = round;
  for (let start = 0; start < count; start++) {
    const turned = [...round.slice(start), ...round.slice(0, start)];
    if (sidePeak(turned) < sidePeak(best)) best = turned;
  }
  return best;
}

/** Lane edges from 0 to the count. */
export function laneEdges(count: BarCount): number[] {
  const edges = [0];
  for (const width of LANES[count]) edges.push((edges.at(-1) ?? 0) + width);
  return edges;
}

/** Agreements less disagreements of the row with itself, shifted; what slides past the end is left out. */
export function autocorrelation(bars: readonly boolean[], shift: number): number {
  let sum = 0;
  for (let index = 0; index + shift < bars.length; index++) sum += bars[index] === bars[index + shift] ? 1 : -1;
  return sum;
}

function sidePeak(bars: readonly boolean[]): number {
  let worst = 0;
  for (let shift = 1; shift < bars.length; shift++) worst = Math.max(worst, Math.abs(autocorrelation(bars, shift)));
  return worst;
}

function fullPeriod(count: BarCount): boolean[] {
  const [stages, tap] = REGISTERS[count];
  let register = 1;
  return Array.from({ length: count }, () => {
    const out = (register & 1) === 1;
    const fed = (register ^ (register >> tap)) & 1;
    register = (register >> 1) | (fed << (stages - 1));
    return out;
  });
}

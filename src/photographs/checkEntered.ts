// A check of the value that was entered: shots with autofocus, focus thrown off before each, from near and from far by turns, against one
// that was focused in live view. The mean of both ways is what the value is off by; the interval is Student's (Student, Biometrika 6(1),
// 1908), with the reference's own doubt beside it (B. L. Welch, Biometrika 34, 1947; F. E. Satterthwaite, Biometrics Bulletin 2(6), 1946).
import type { DepthOfField } from '../optics/depthOfField.ts';
import { shareOfDepth } from '../optics/depthOfField.ts';
import { around, doubtOf, type WithInterval } from './withInterval.ts';
import { studentQuantile } from './studentT.ts';

export interface CheckShot {
  /** Where focus was thrown off to before. */
  readonly thrown: 'near' | 'far';
  /** Millimetres from the target to the focused plane, positive behind it. */
  readonly error: WithInterval;
}

export interface EnteredCheck {
  /** What the value is off by, in millimetres at the target. */
  readonly bias: WithInterval;
  /** Standard deviation of shots thrown off the same way. */
  readonly repeatability: number;
  /** Mean from near less mean from far; null where one of them is missing. */
  readonly nearLessFar: WithInterval | null;
  readonly verdict: CheckVerdict;
}

type CheckVerdict =
  { readonly is: 'confirmed' } | { readonly is: 'shifted'; readonly lies: 'in front' | 'behind' } | { readonly is: 'not enough'; readonly more: number };

/** Fewer shots say nothing of their own scatter. */
const LEAST_SHOTS = 4;
/** Confirmed is what surely uses no more than this share of the depth on its own side (common practice, no source). */
const TOLERATED = 0.5;
/** More are never asked for at once. */
const MOST_MORE = 12;

/** Null for no shots. `reference` is null where none was taken; then the ramp is taken to stand true. */
export function checkEntered(shots: readonly CheckShot[], reference: WithInterval | null, depth: DepthOfField): EnteredCheck | null {
  if (shots.length === 0) return null;
  const [near, far] = (['near', 'far'] as const).map((way) => shots.filter(({ thrown }) => thrown === way).map(({ error }) => error.value)) as [
    number[],
    number[],
  ];
  const groups = [near, far].filter(({ length }) => length > 0);
  const freedom = shots.length - groups.length;
  const measured = Math.sqrt(meanOf(shots.map(({ error }) => doubtOf(error) ** 2)));
  const squares = groups.reduce((sum, group) => sum + group.reduce((all, value) => all + (value - meanOf(group)) ** 2, 0), 0);
  const repeatability = Math.max(measured, freedom > 0 ? Math.sqrt(squares / freedom) : 0);
  const value = meanOf(groups.map(meanOf)) - (reference?.value ?? 0);
  const ownVariance = (repeatability ** 2 * groups.reduce((sum, { length }) => sum + 1 / length, 0)) / groups.length ** 2;
  const referenceVariance = reference === null ? 0 : doubtOf(reference) ** 2;
  const margin = marginOf(ownVariance, referenceVariance, freedom);
  const bias = around(value, margin);
  return {
    bias,
    repeatability,
    nearLessFar:
      groups.length < 2 || freedom < 1
        ? null
        : around(meanOf(near) - meanOf(far), studentQuantile(0.975, freedom) * repeatability * Math.sqrt(1 / near.length + 1 / far.length)),
    verdict: verdictOn(bias, shots.length, repeatability, referenceVariance, depth),
  };
}

function marginOf(own: number, reference: number, freedom: number): number {
  if (freedom < 1) return Infinity;
  const variance = own + reference;
  // The reference's doubt is taken for known.
  const effective = own === 0 ? freedom : (freedom * variance ** 2) / own ** 2;
  return studentQuantile(0.975, effective) * Math.sqrt(variance);
}

function verdictOn(bias: WithInterval, count: number, repeatability: number, reference: number, depth: DepthOfField): CheckVerdict {
  if (count >= LEAST_SHOTS) {
    if (shareOfDepth(bias.low, depth) <= TOLERATED && shareOfDepth(bias.high, depth) <= TOLERATED) return { is: 'confirmed' };
    if (bias.low > 0) return { is: 'shifted', lies: 'behind' };
    if (bias.high < 0) return { is: 'shifted', lies: 'in front' };
  }
  return { is: 'not enough', more: moreShots(bias.value, count, repeatability, reference, depth) };
}

/** How many more would tell, if they scatter as these do about the same mean. An even number comes out, for near and far by turns. */
function moreShots(mean: number, count: number, repeatability: number, reference: number, depth: DepthOfField): number {
  for (let more = Math.max(1, LEAST_SHOTS - count); more < MOST_MORE; more += 1) {
    if ((count + more) % 2 === 1) continue;
    const { low, high } = around(mean, marginOf(repeatability ** 2 / (count + more), reference, count + more - 2));
    const holds = shareOfDepth(low, depth) <= TOLERATED && shareOfDepth(high, depth) <= TOLERATED;
    if (holds || low > 0 || high < 0) return more;
  }
  return MOST_MORE;
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

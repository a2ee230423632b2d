// How well blur along the ramp fits a lens that is focused at one depth: the constant blur of upright and of level edges and the growth with
// depth are fitted to the readings, again and again, since a disc's part in the blur hangs on its size. Readings that fit nothing count less
// (the biweight: A. E. Beaton, J. W. Tukey, Technometrics 16(2), 1974).
import { defocusSquare, discSwell } from './defocusModel.ts';
import type { RampReading } from './followedEdge.ts';
import { solveLinear } from './linearSystem.ts';

/** Readings as variances of the blur, in square pixels; `group` 0 runs upright, 1 level. */
export interface BlurVariances {
  readonly count: number;
  readonly depth: Float64Array;
  readonly group: Uint8Array;
  readonly value: Float64Array;
  readonly doubt: Float64Array;
}

/** What the lens is known to be: the target's distance in millimetres, and the growth that the optics let expect. */
export interface ExpectedGrowth {
  readonly distance: number;
  readonly growth: number;
}

export interface AtDepth {
  readonly focus: number;
  /** Half a chi square, with what the growth is off by. */
  readonly loss: number;
  readonly constants: readonly [upright: number, level: number];
  readonly growth: number;
  /** What each reading is off by, in its own standard deviations. */
  readonly rests: Float64Array;
}

/** Lenses shorten as they focus near, apertures are engraved in round numbers: the growth is expected to within this share (from memory). */
const GROWTH_DOUBT = 0.3;
/** A normal curve fits a disc only so well. */
const MODEL_DOUBT = 0.04;
/** Where a reading stops counting, in standard deviations (95 % efficiency: Beaton and Tukey's constant). */
const CUT = 4.685;
const MOST_TURNS = 8;
/** The loss has settled when it moves by less. */
const SETTLED = 1e-4;

export function blurVariances(readings: readonly RampReading[]): BlurVariances {
  return {
    count: readings.length,
    depth: Float64Array.from(readings, ({ depth }) => depth),
    group: Uint8Array.from(readings, ({ runs }) => (runs === 'upright' ? 0 : 1)),
    value: Float64Array.from(readings, ({ spread }) => spread ** 2),
    doubt: Float64Array.from(readings, ({ spread, uncertain }) => Math.hypot(2 * spread * uncertain, MODEL_DOUBT * spread ** 2)),
  };
}

/** `unrest`: how much more the readings scatter than they say of themselves. Null where they carry no growth. */
export function blurAtDepth(blurs: BlurVariances, expected: ExpectedGrowth, focus: number, unrest: number): AtDepth | null {
  const { count, depth, group, value, doubt } = blurs;
  const plain = depth.map((each) => defocusSquare(each, focus, expected.distance));
  const squares = plain.slice();
  const weights = doubt.map((each) => 1 / each ** 2);
  const rests = new Float64Array(count);
  let before = Infinity;
  for (let turn = 1; ; turn += 1) {
    const solved = solveWeighted(blurs, squares, weights, expected.growth, unrest);
    if (solved === null) return null;
    const { constants, growth } = solved;
    let loss = ((growth / expected.growth - 1) / GROWTH_DOUBT) ** 2 / 2;
    for (let at = 0; at < count; at += 1) {
      const constant = constants[group[at] as 0 | 1];
      squares[at] = plain[at]! * discSwell(growth * plain[at]!, constant);
      rests[at] = (value[at]! - constant - growth * squares[at]!) / doubt[at]!;
      const inside = Math.max(0, 1 - (rests[at]! / unrest / CUT) ** 2);
      weights[at] = (inside / doubt[at]!) ** 2;
      // Half the square near zero, even beyond the cut.
      loss += (CUT ** 2 / 6) * (1 - inside ** 3);
    }
    if (turn === MOST_TURNS || Math.abs(before - loss) < SETTLED) return { focus, constants, growth, rests, loss };
    before = loss;
  }
}

function solveWeighted(
  { count, group, value }: BlurVariances,
  squares: Float64Array,
  weights: Float64Array,
  expected: number,
  unrest: number,
): { constants: readonly [number, number]; growth: number } | null {
  const own = [0, 0];
  const crossed = [0, 0];
  const values = [0, 0];
  let [both, right] = [0, 0];
  for (let at = 0; at < count; at += 1) {
    const weight = weights[at]! / unrest ** 2;
    const [square, which] = [squares[at]!, group[at]!];
    own[which]! += weight;
    crossed[which]! += weight * square;
    values[which]! += weight * value[at]!;
    both += weight * square * square;
    right += weight * square * value[at]!;
  }
  const trust = 1 / (GROWTH_DOUBT * expected) ** 2;
  const matrix = [
    [own[0]! + 1e-9, 0, crossed[0]!],
    [0, own[1]! + 1e-9, crossed[1]!],
    [crossed[0]!, crossed[1]!, both + trust],
  ];
  const solved = solveLinear(matrix, [values[0]!, values[1]!, right + trust * expected]);
  if (solved === null) return null;
  const [upright, level, growth] = solved as [number, number, number];
  return growth > 0 ? { constants: [upright, level], growth } : null;
}

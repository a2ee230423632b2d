// The depth of the focused plane from how blur runs along the ramp: the best depth is where a lens focused there fits the readings best; the
// interval holds the depths that fit hardly worse (profile likelihood: D. M. Bates, D. G. Watts, Nonlinear Regression Analysis, 1988, ch. 6).
import { blurAtDepth, blurVariances, type AtDepth, type BlurVariances, type ExpectedGrowth } from './blurAtDepth.ts';
import type { RampReading } from './followedEdge.ts';
import { medianOf } from './median.ts';
import { studentQuantile } from './studentT.ts';

export interface RampFit {
  /** Depth of the focused plane and its 95 % interval, in millimetres. */
  readonly focus: number;
  readonly low: number;
  readonly high: number;
  /** Least variance of the blur of upright and of level edges, in square pixels; null where there are none. */
  readonly least: { readonly upright: number | null; readonly level: number | null };
  /** How fast the variance grows, over what the optics let expect. */
  readonly growth: number;
  /** Standard deviation of the readings about the fit, over what each said of itself. */
  readonly unrest: number;
}

/** What the depth is looked for with, and the depths to try. */
export interface RampQuestion extends ExpectedGrowth {
  readonly from: number;
  readonly to: number;
}

const TRIED = 60;
const LOOKS = 3;
/** Wide enough that no reading is cut off before the first look. */
const FIRST_UNREST = 3;

/** Null where the readings do not carry a fit. At least eight are wanted. */
export function fitRamp(readings: readonly RampReading[], question: RampQuestion): RampFit | null {
  if (readings.length < 8) return null;
  const blurs = blurVariances(readings);
  const step = (question.to - question.from) / TRIED;
  // The unrest of one look sets the measure of the next; losses are compared by the measure of the last alone.
  let unrest = FIRST_UNREST;
  let best = bestDepth(blurs, question, step, unrest);
  for (let look = 1; best !== null && look < LOOKS; look += 1) {
    unrest = Math.max(1, 1.4826 * medianOf(Array.from(best.rests, Math.abs)));
    best = bestDepth(blurs, question, step, unrest);
  }
  if (best === null) return null;
  // Twice the loss is what a chi square of one degree of freedom is held against; few readings make it an F, the square of a t.
  const most = best.loss + studentQuantile(0.975, Math.max(1, readings.length - 4)) ** 2 / 2;
  const worse = (at: number): boolean => (blurAtDepth(blurs, question, at, unrest)?.loss ?? Infinity) > most;
  const { focus, constants, growth } = best;
  return {
    focus,
    low: edgeOf(worse, focus, question.from, step),
    high: edgeOf(worse, focus, question.to, step),
    least: { upright: blurs.group.includes(0) ? constants[0] : null, level: blurs.group.includes(1) ? constants[1] : null },
    growth: growth / question.growth,
    unrest,
  };
}

/** The least loss of those tried, and then near it, by golden section (J. Kiefer, Proc. AMS 4, 1953). */
function bestDepth(blurs: BlurVariances, question: RampQuestion, step: number, unrest: number): AtDepth | null {
  let best: AtDepth | null = null;
  const tryAt = (focus: number): number => {
    const fit = blurAtDepth(blurs, question, focus, unrest);
    if (fit !== null && (best === null || fit.loss < best.loss)) best = fit;
    return fit?.loss ?? Infinity;
  };
  for (let index = 0; index <= TRIED; index += 1) tryAt(question.from + index * step);
  const coarse = best as AtDepth | null;
  if (coarse === null) return null;
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [Math.max(question.from, coarse.focus - step), Math.min(question.to, coarse.focus + step)];
  let [a, b] = [high - golden * (high - low), low + golden * (high - low)];
  let [atA, atB] = [tryAt(a), tryAt(b)];
  for (let turn = 0; turn < 16; turn += 1) {
    if (atA < atB) {
      [high, b, atB] = [b, a, atA];
      a = high - golden * (high - low);
      atA = tryAt(a);
    } else {
      [low, a, atA] = [a, b, atB];
      b = low + golden * (high - low);
      atB = tryAt(b);
    }
  }
  return best;
}

/** Outward from the best depth to where the fit is worse, at most to the end of what is tried. */
function edgeOf(worse: (at: number) => boolean, best: number, end: number, step: number): number {
  const way = Math.sign(end - best);
  let inside = best;
  // Ever longer strides: the interval may be a hair or all of the ramp.
  for (let stride = step / 64; ; stride *= 1.5) {
    const next = inside + way * stride;
    if (way * (end - next) <= 0) return worse(end) ? halved(worse, inside, end) : end;
    if (worse(next)) return halved(worse, inside, next);
    inside = next;
  }
}

function halved(worse: (at: number) => boolean, inside: number, outside: number): number {
  let [good, bad] = [inside, outside];
  for (let turn = 0; turn < 10; turn += 1) {
    const middle = (good + bad) / 2;
    if (worse(middle)) bad = middle;
    else good = middle;
  }
  return (good + bad) / 2;
}

// Slanted edges whose truth is known: a step blurred by a Gaussian and by the square pixel that samples it. Everything depends on the distance
// from the edge alone, so the profile is worked out once, finely, and read off a pixel at a time.
import type { Plane } from '../../src/photographs/plane.ts';
import type { EdgePlace } from '../../src/photographs/edgeStrip.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';

export interface SlantedEdge {
  /** Of the Gaussian, in pixels. */
  readonly sigma: number;
  /** Degrees from the axis, clockwise as seen. */
  readonly angle: number;
  readonly rows: number;
  readonly across: number;
  readonly runs: 'upright' | 'level';
  /** Light on the left or above, and on the other side. */
  readonly levels: readonly [number, number];
  /** Where the edge crosses the middle row, from the middle column, in pixels. */
  readonly offset: number;
  /** Standard deviation of a pixel. */
  readonly noise: number;
  readonly seed: number;
}

export const USUAL_EDGE: SlantedEdge = { sigma: 1, angle: 5, rows: 200, across: 160, runs: 'upright', levels: [0.05, 0.6], offset: 0.3, noise: 0, seed: 1 };

const sinc = (x: number): number => (x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x));

/** Contrast of a Gaussian blur: its Fourier transform. */
export const gaussianContrast = (sigma: number, frequency: number): number => Math.exp(-2 * (Math.PI * sigma * frequency) ** 2);

/** Contrast of a square pixel across an edge that leans by this angle, in degrees. */
export const pixelContrast = (frequency: number, angle = 0): number => {
  const turned = (angle * Math.PI) / 180;
  return Math.abs(sinc(frequency * Math.cos(turned)) * sinc(frequency * Math.sin(turned)));
};

/** First frequency at which so much of the contrast is left. */
export function frequencyAt(level: number, contrast: (frequency: number) => number): number {
  let [low, high] = [0, 1];
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (contrast(middle) > level) low = middle;
    else high = middle;
  }
  return low;
}

export const trueHalf = ({ sigma, angle }: SlantedEdge): number => frequencyAt(0.5, (f) => gaussianContrast(sigma, f) * pixelContrast(f, angle));

export interface RenderedEdge {
  readonly plane: Plane;
  readonly place: EdgePlace;
}

/** The whole height (or width) of the picture is the edge's. */
export function renderEdge(given: Partial<SlantedEdge>): RenderedEdge {
  const edge = { ...USUAL_EDGE, ...given };
  const { rows, across, levels, noise, offset, runs } = edge;
  const random = seededRandom(edge.seed);
  // Clockwise turns an upright edge's lower end to the left, a level one's right end down.
  const lean = Math.tan((edge.angle * Math.PI) / 180) * (runs === 'upright' ? -1 : 1);
  const profile = profileOf(edge);
  const [width, height] = runs === 'upright' ? [across, rows] : [rows, across];
  const light = new Float32Array(width * height);
  for (let row = 0; row < rows; row++) {
    for (let at = 0; at < across; at++) {
      const distance = (at + 0.5 - across / 2 - offset - lean * (row + 0.5 - rows / 2)) / Math.hypot(1, lean);
      const value = levels[0] + (levels[1] - levels[0]) * profile(distance);
      light[runs === 'upright' ? row * width + at : at * width + row] = noise > 0 ? value + normal(random, 0, noise) : value;
    }
  }
  const end = (along: number) => {
    const place = across / 2 + offset + lean * (along - rows / 2);
    return runs === 'upright' ? { x: place, y: along } : { x: along, y: place };
  };
  return { plane: { width, height, light }, place: { from: end(0), to: end(rows) } };
}

const FINE = 200;

/** Share of the step reached at this distance: the Gaussian's integral under the pixel's shadow, itself two boxes. */
function profileOf({ sigma, angle }: SlantedEdge): (distance: number) => number {
  const reach = Math.ceil(6 * sigma + 3);
  const turned = Math.abs((angle * Math.PI) / 180);
  const size = 2 * reach * FINE + 1;
  // The line spread of Gaussian, box and box, by sums over fine steps.
  let spread = Float64Array.from({ length: size }, (_, at) => Math.exp(-(((at - reach * FINE) / FINE / sigma) ** 2) / 2));
  for (const box of [Math.cos(turned), Math.sin(turned)]) spread = boxed(spread, (box * FINE) / 2);
  const sums = new Float64Array(size);
  for (let at = 1; at < size; at++) sums[at] = sums[at - 1]! + (spread[at - 1]! + spread[at]!) / 2;
  const whole = sums[size - 1]!;
  return (distance) => {
    const at = (distance + reach) * FINE;
    if (at <= 0) return 0;
    if (at >= size - 1) return 1;
    const before = Math.floor(at);
    return (sums[before]! + (at - before) * (sums[before + 1]! - sums[before]!)) / whole;
  };
}

/** Mean over a box of any half width, by the running integral of straight lines between the points. */
function boxed(values: Float64Array, half: number): Float64Array<ArrayBuffer> {
  if (half < 1e-9) return Float64Array.from(values);
  const sums = new Float64Array(values.length);
  for (let at = 1; at < values.length; at++) sums[at] = sums[at - 1]! + (values[at - 1]! + values[at]!) / 2;
  const upTo = (at: number): number => {
    const inside = Math.max(0, Math.min(values.length - 1, at));
    const before = Math.min(values.length - 2, Math.floor(inside));
    const part = inside - before;
    return sums[before]! + part * (values[before]! + (part * (values[before + 1]! - values[before]!)) / 2);
  };
  return values.map((_, at) => (upTo(at + half) - upTo(at - half)) / (2 * half));
}

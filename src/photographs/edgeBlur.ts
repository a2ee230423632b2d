// How blurred a short piece of a straight edge is: the normal curve's sum fitted to the pixels beside it, by the method of Levenberg
// and Marquardt (D. W. Marquardt, J. SIAM 11(2), 1963). A disc of defocus is no normal curve; the fit's spread grows with it all the
// same, alike before and behind the focused plane.
import { solveLinear } from './linearSystem.ts';
import { normalBelow, normalHeight } from './normalCurve.ts';
import type { Plane } from './plane.ts';
import type { Point } from '../optics/print/drawing.ts';

export interface EdgePiece {
  /** The middle of the piece, in pixels. */
  readonly middle: Point;
  /** Of length 1, along the edge. */
  readonly along: Point;
  /** Pixels to either end, and from the edge to the nearest other one. */
  readonly halfLength: number;
  readonly room: number;
}

export interface EdgeBlur {
  /** Standard deviation of the blur across the edge, in pixels, and that of the fit. */
  readonly spread: number;
  readonly uncertain: number;
  /** Light of the brighter side less that of the darker. */
  readonly contrast: number;
  /** How far the edge lies from where it was looked for, across it, in pixels. */
  readonly off: number;
  /** Share of the pixels that are blown out. */
  readonly blown: number;
}

/** Pixels of a piece: how far along it, from -1 to 1, how far across it, in pixels, and their light. */
interface Samples {
  readonly count: number;
  readonly along: Float64Array;
  readonly across: Float64Array;
  readonly light: Float64Array;
}

/** Share of the way to the nearest other edge that is free of that one's blur, and the widest look to either side, in pixels. */
const CLEAR = 0.6;
export const WIDEST = 40;
/** A little below white, for what a file's compression makes of it. */
const BLOWN = 0.97;

/** Null where no edge is: too few pixels, no contrast, or none that a normal curve fits. */
export function edgeBlur(plane: Plane, piece: EdgePiece): EdgeBlur | null {
  const widest = Math.min(WIDEST, CLEAR * piece.room);
  const first = fitPiece(plane, piece, widest, null);
  if (first === null) return null;
  // Fewer pixels of the even sides, whose unevenness would count as blur.
  const room = Math.min(widest, Math.max(3, 3.2 * first.spread + 1.5));
  return room < 0.8 * widest ? (fitPiece(plane, piece, room, first) ?? first) : first;
}

function fitPiece(plane: Plane, piece: EdgePiece, room: number, before: EdgeBlur | null): EdgeBlur | null {
  const samples = samplesOf(plane, piece, room, before?.off ?? 0);
  if (samples.count < 24) return null;
  const [low, high] = sidesOf(samples, 0.6 * room);
  const fit = marquardt(samples, [low, high - low, 0, Math.log(before?.spread ?? Math.max(0.8, room / 5)), 0]);
  if (fit === null) return null;
  const [, contrast, shift, logSpread] = fit.parameters;
  const spread = Math.exp(logSpread);
  if (!(Math.abs(contrast) > 0.02 && Math.abs(shift) < 0.6 * room && spread > 0.15 && spread < room / 1.8)) return null;
  return {
    spread,
    uncertain: spread * fit.uncertain,
    contrast: Math.abs(contrast),
    off: (before?.off ?? 0) + shift,
    blown: samples.light.reduce((sum, light) => sum + (light > BLOWN ? 1 : 0), 0) / samples.count,
  };
}

function samplesOf({ width, height, light }: Plane, { middle, along, halfLength }: EdgePiece, room: number, off: number): Samples {
  const reachX = Math.abs(along.x) * halfLength + Math.abs(along.y) * (room + Math.abs(off));
  const reachY = Math.abs(along.y) * halfLength + Math.abs(along.x) * (room + Math.abs(off));
  const [left, right] = [Math.max(0, Math.floor(middle.x - reachX)), Math.min(width - 1, Math.floor(middle.x + reachX))];
  const [top, bottom] = [Math.max(0, Math.floor(middle.y - reachY)), Math.min(height - 1, Math.floor(middle.y + reachY))];
  const most = Math.max(0, right - left + 1) * Math.max(0, bottom - top + 1);
  const samples = { along: new Float64Array(most), across: new Float64Array(most), light: new Float64Array(most) };
  let count = 0;
  for (let y = top; y <= bottom; y += 1) {
    for (let x = left; x <= right; x += 1) {
      const [dx, dy] = [x + 0.5 - middle.x, y + 0.5 - middle.y];
      const lengthwise = dx * along.x + dy * along.y;
      const across = dy * along.x - dx * along.y - off;
      if (Math.abs(lengthwise) > halfLength || Math.abs(across) > room) continue;
      samples.along[count] = lengthwise / halfLength;
      samples.across[count] = across;
      samples.light[count] = light[y * width + x]!;
      count += 1;
    }
  }
  return { count, along: samples.along.subarray(0, count), across: samples.across.subarray(0, count), light: samples.light.subarray(0, count) };
}

/** Mean light of what lies farther off than this on either side; not a number where nothing does. */
function sidesOf({ count, across, light }: Samples, beyond: number): readonly [number, number] {
  let [low, lows, high, highs] = [0, 0, 0, 0];
  for (let at = 0; at < count; at += 1) {
    if (across[at]! < -beyond) [low, lows] = [low + light[at]!, lows + 1];
    else if (across[at]! > beyond) [high, highs] = [high + light[at]!, highs + 1];
  }
  return [low / lows, high / highs];
}

/** Darker side, contrast, shift, logarithm of the spread, and how the shift changes towards the piece's end. */
type Parameters = readonly [number, number, number, number, number];
const COUNT = 5;

function marquardt(samples: Samples, start: Parameters): { parameters: Parameters; uncertain: number } | null {
  let now = start;
  let normal = normalEquations(samples, now);
  let damping = 1e-2;
  for (let turn = 0; turn < 40; turn += 1) {
    const step = solveLinear(
      normal.matrix.map((row, index) => row.map((entry, column) => (column === index ? entry * (1 + damping) + 1e-12 : entry))),
      normal.right,
    );
    if (step === null) return null;
    const tried = now.map((value, index) => value + step[index]!) as unknown as Parameters;
    const next = normalEquations(samples, tried);
    if (next.squares < normal.squares) {
      const done = normal.squares - next.squares < 1e-7 * normal.squares;
      [now, normal, damping] = [tried, next, damping / 8];
      if (done) break;
    } else {
      damping *= 8;
      if (damping > 1e8) break;
    }
  }
  const unit = solveLinear(normal.matrix, [0, 0, 0, 1, 0]);
  if (unit === null || !(unit[3]! > 0)) return null;
  return { parameters: now, uncertain: Math.sqrt((unit[3]! * normal.squares) / (samples.count - COUNT)) };
}

function normalEquations({ count, along, across, light }: Samples, [dark, contrast, shift, logSpread, turn]: Parameters) {
  const spread = Math.exp(logSpread);
  const products = new Float64Array(COUNT * COUNT);
  const right = new Float64Array(COUNT);
  const slopes = Float64Array.of(1, 0, 0, 0, 0);
  let squares = 0;
  for (let at = 0; at < count; at += 1) {
    const z = (across[at]! - shift - turn * along[at]!) / spread;
    const height = normalHeight(z);
    const share = normalBelow(z, height);
    const steep = contrast * height;
    slopes[1] = share;
    slopes[2] = -steep / spread;
    slopes[3] = -steep * z;
    slopes[4] = slopes[2] * along[at]!;
    const rest = light[at]! - dark - contrast * share;
    squares += rest * rest;
    for (let row = 0; row < COUNT; row += 1) {
      right[row]! += slopes[row]! * rest;
      for (let column = 0; column <= row; column += 1) products[COUNT * row + column]! += slopes[row]! * slopes[column]!;
    }
  }
  const matrix = Array.from({ length: COUNT }, (_, row) =>
    Array.from({ length: COUNT }, (__, column) => products[COUNT * Math.max(row, column) + Math.min(row, column)]!),
  );
  return { matrix, right: [...right], squares };
}

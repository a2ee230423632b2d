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

interface Sample {
  readonly along: number;
  readonly across: number;
  readonly light: number;
}

/** Share of the way to the nearest other edge that is free of that one's blur, and the widest look to either side, in pixels. */
const CLEAR = 0.6;
const WIDEST = 40;
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
  if (samples.length < 24) return null;
  const mean = (some: readonly Sample[]) => some.reduce((sum, { light }) => sum + light, 0) / some.length;
  const low = mean(samples.filter(({ across }) => across < -0.6 * room));
  const high = mean(samples.filter(({ across }) => across > 0.6 * room));
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
    blown: samples.filter(({ light }) => light > BLOWN).length / samples.length,
  };
}

function samplesOf({ width, height, light }: Plane, { middle, along, halfLength }: EdgePiece, room: number, off: number): Sample[] {
  const reachX = Math.abs(along.x) * halfLength + Math.abs(along.y) * (room + Math.abs(off));
  const reachY = Math.abs(along.y) * halfLength + Math.abs(along.x) * (room + Math.abs(off));
  const samples: Sample[] = [];
  for (let y = Math.max(0, Math.floor(middle.y - reachY)); y <= Math.min(height - 1, middle.y + reachY); y += 1) {
    for (let x = Math.max(0, Math.floor(middle.x - reachX)); x <= Math.min(width - 1, middle.x + reachX); x += 1) {
      const [dx, dy] = [x + 0.5 - middle.x, y + 0.5 - middle.y];
      const lengthwise = dx * along.x + dy * along.y;
      const across = dy * along.x - dx * along.y - off;
      if (Math.abs(lengthwise) > halfLength || Math.abs(across) > room) continue;
      samples.push({ along: lengthwise / halfLength, across, light: light[y * width + x]! });
    }
  }
  return samples;
}

/** Darker side, contrast, shift, logarithm of the spread, and how the shift changes towards the piece's end. */
type Parameters = readonly [number, number, number, number, number];

function marquardt(samples: readonly Sample[], start: Parameters): { parameters: Parameters; uncertain: number } | null {
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
  return { parameters: now, uncertain: Math.sqrt((unit[3]! * normal.squares) / (samples.length - 5)) };
}

function normalEquations(samples: readonly Sample[], [dark, contrast, shift, logSpread, turn]: Parameters) {
  const spread = Math.exp(logSpread);
  const matrix = Array.from({ length: 5 }, () => [0, 0, 0, 0, 0]);
  const right = [0, 0, 0, 0, 0];
  let squares = 0;
  const slopes = [1, 0, 0, 0, 0];
  for (const { along, across, light } of samples) {
    const z = (across - shift - turn * along) / spread;
    const share = normalBelow(z);
    const steep = contrast * normalHeight(z);
    slopes[1] = share;
    slopes[2] = -steep / spread;
    slopes[3] = -steep * z;
    slopes[4] = (-steep * along) / spread;
    const rest = light - dark - contrast * share;
    squares += rest * rest;
    for (let row = 0; row < 5; row += 1) {
      right[row]! += slopes[row]! * rest;
      for (let column = 0; column <= row; column += 1) matrix[row]![column]! += slopes[row]! * slopes[column]!;
    }
  }
  for (let row = 0; row < 5; row += 1) for (let column = row + 1; column < 5; column += 1) matrix[row]![column] = matrix[column]![row]!;
  return { matrix, right, squares };
}

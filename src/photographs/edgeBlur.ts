// How blurred a short piece of a straight edge is, by the normal curve's sum that fits the pixels beside it. A disc of defocus is no normal
// curve; the fit's spread grows with it all the same, alike before and behind the focused plane.
import { fitNormalSum, type EdgeSamples } from './normalSum.ts';
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
  const fit = fitNormalSum(samples, [low, high - low, 0, Math.log(before?.spread ?? Math.max(0.8, room / 5)), 0]);
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

function samplesOf({ width, height, light }: Plane, { middle, along, halfLength }: EdgePiece, room: number, off: number): EdgeSamples {
  const reachX = Math.abs(along.x) * halfLength + Math.abs(along.y) * (room + Math.abs(off));
  const reachY = Math.abs(along.y) * halfLength + Math.abs(along.x) * (room + Math.abs(off));
  const [left, right] = [Math.max(0, Math.floor(middle.x - reachX)), Math.min(width - 1, Math.floor(middle.x + reachX))];
  const [top, bottom] = [Math.max(0, Math.floor(middle.y - reachY)), Math.min(height - 1, Math.floor(middle.y + reachY))];
  const most = Math.max(0, right - left + 1) * Math.max(0, bottom - top + 1);
  const samples = { along: new Float64Array(most), across: new Float64Array(most), light: new Float64Array(most) };
  let count = 0;
  for (let y = top; y <= bottom; y += 1) {
    for (let x = left; x <= right; x += 1) {
      const dx = x + 0.5 - middle.x;
      const dy = y + 0.5 - middle.y;
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
function sidesOf({ count, across, light }: EdgeSamples, beyond: number): readonly [number, number] {
  let [low, lows, high, highs] = [0, 0, 0, 0];
  for (let at = 0; at < count; at += 1) {
    if (across[at]! < -beyond) [low, lows] = [low + light[at]!, lows + 1];
    else if (across[at]! > beyond) [high, highs] = [high + light[at]!, highs + 1];
  }
  return [low / lows, high / highs];
}

// A leaning scale that shows where focus really lies. It is mounted under the flat target, its zero line in the
// target's plane, its upper end leaning away from the camera; its lines are numbered by the depth they stand at, so
// that the sharpest line reads as millimetres of focus error. For a line at length r along a face that leans by β out
// of the target's plane: r·sin β.
import { millimetres, type Millimetres } from '../../units.ts';
import { answered, cannot, type Answer } from '../../result.ts';
import type { BenchFault } from '../fault.ts';
import { degrees, fromRadians, radians, type Degrees } from '../quantity.ts';
import { rectangle, text, wrapWords, type Drawing, type Shape } from './drawing.ts';
import { TRUE_SIZE, type PrintFactor } from './printCheck.ts';

/** The lean the ramp is drawn for. */
export const RAMP_LEAN: Degrees = degrees(45);

const WIDTH = 90;
const BORDER = 6;
const WORDS = 24;
/** Longest face that fits either paper with its words. */
const LONGEST = 215;

export interface Ramp {
  readonly drawing: Drawing;
  /** Depth to either side of the target that its lines reach. */
  readonly reach: Millimetres;
  /** Depth from one numbered line to the next. */
  readonly every: Millimetres;
}

/** What is written on it: lines above it, and the depth that a line stands at, with its sign. */
export interface RampLabels {
  readonly words: readonly string[];
  readonly depth: (depth: number) => string;
}

/** A ramp whose numbered lines span about one and a half times the depth of field, as far as a sheet allows. */
export function drawRamp(depthOfField: Millimetres | 'infinite', { words, depth: written }: RampLabels): Ramp {
  const sine = Math.sin(radians(RAMP_LEAN));
  const most = (LONGEST / 2) * sine;
  const wanted = depthOfField === 'infinite' ? most : Math.min(most, Math.max(0.75 * depthOfField, 3));
  const every = roundStep(wanted / 7);
  const count = Math.max(2, Math.floor(wanted / every + 1e-9));
  const reach = count * every;
  const zero = BORDER + WORDS + reach / sine + 4;
  const lines = Array.from({ length: 2 * count + 1 }, (_, index) => index - count);
  const shapes: Shape[] = [
    ...words
      .flatMap((line) => wrapWords(line, 3.2, WIDTH - 2 * BORDER))
      .slice(0, 5)
      .map((line, index) => text(BORDER, BORDER + 4 * (index + 0.8), 3.2, line)),
    ...lines.flatMap((line) => numberedLine(line, written(line * every), zero - (line * every) / sine, every / sine)),
  ];
  const height = millimetres(zero + reach / sine + 4 + BORDER);
  return {
    drawing: { width: millimetres(WIDTH), height, shapes },
    reach: millimetres(reach),
    every: millimetres(every),
  };
}

/** Numbers stand left and right by turns; the zero line crosses the whole face. Positive is behind the target. */
function numberedLine(line: number, label: string, y: number, spacing: number): Shape[] {
  const size = Math.min(4, Math.max(1.6, spacing * 0.7));
  const thick = Math.min(0.5, spacing / 6);
  if (line === 0) return [rectangle(BORDER, y - thick, WIDTH - 2 * BORDER, 2 * thick), text(WIDTH - BORDER - 4, y - 1, size, label)];
  const onLeft = line % 2 === 0;
  const half = WIDTH / 2 - BORDER - 14;
  const start = onLeft ? BORDER + 14 : WIDTH / 2;
  return [rectangle(start, y - thick / 2, half, thick), text(onLeft ? BORDER + 7 : WIDTH - BORDER - 7, y + size * 0.35, size, label, 'middle')];
}

/** One, two or five times a power of ten, at least a tenth. */
function roundStep(about: number): number {
  const power = 10 ** Math.floor(Math.log10(about));
  const mantissa = about / power;
  return Math.max(0.1, power * (mantissa < 1.5 ? 1 : mantissa < 3.5 ? 2 : mantissa < 7.5 ? 5 : 10));
}

/** The lean a ramp was really set up at, from how far its upper end stands back and the length of its face. */
export function rampLean(setBack: Millimetres, face: Millimetres): Answer<Degrees, BenchFault> {
  if (setBack > 0 && setBack < face) return answered(fromRadians(Math.asin(setBack / face)));
  return cannot({ is: 'set-back too large' });
}

/** Focus error in millimetres from the number beside the sharpest line; positive is behind the target. */
export function rampError(reading: number, lean: Degrees = RAMP_LEAN, factor: PrintFactor = TRUE_SIZE): Answer<number, BenchFault> {
  if (lean < 10 || lean > 80) return cannot({ is: 'lean too steep or flat' });
  if (!Number.isFinite(reading)) return cannot({ is: 'no ramp line' });
  return answered((reading * factor * Math.sin(radians(lean))) / Math.sin(radians(RAMP_LEAN)));
}

// A leaning scale that shows where focus really lies. It is mounted under the flat target, its zero line in the
// target's plane, its upper end leaning away from the camera; its lines are numbered by the depth they stand at, so
// that the sharpest line reads as millimetres of focus error. For a line at length r along a face that leans by β out
// of the target's plane: r·sin β.
import { millimetres, type Millimetres } from '../../units.ts';
import { failed, got, type Result } from '../../result.ts';
import type { BenchFault } from '../fault.ts';
import { fromRadians, radians, type Degrees } from '../quantity.ts';
import { rectangle, text, type Drawing, type Shape } from './drawing.ts';
import { wrapWords } from './wrapWords.ts';
import { drawMark } from './marks.ts';
import { TRUE_SIZE, type PrintFactor } from './printCheck.ts';
import { layOutRamp, numberRamp, RAMP_BORDER, RAMP_LEAN, RAMP_WIDTH, RAMP_WORDS, rampMarks, type RampLayout } from './rampLayout.ts';
import { drawTexture, TEXTURE_WIDTH } from './rampTexture.ts';

export interface Ramp {
  readonly drawing: Drawing;
  readonly layout: RampLayout;
}

/** What is written on it: lines above it, and the depth that a line stands at, with its sign. */
export interface RampLabels {
  readonly words: readonly string[];
  readonly depth: (depth: number) => string;
}

/** A ramp whose numbered lines span about one and a half times the depth of field, as far as a sheet allows. */
export function drawRamp(depthOfField: Millimetres | 'infinite', { words, depth: written }: RampLabels): Ramp {
  const layout = layOutRamp(numberRamp(depthOfField));
  const { every, count, zero } = layout;
  const spacing = every / Math.sin(radians(RAMP_LEAN));
  const lines = Array.from({ length: 2 * count + 1 }, (_, index) => index - count);
  const shapes: Shape[] = [
    ...words
      .flatMap((line) => wrapWords(line, 3.2, RAMP_WORDS.width))
      .slice(0, 5)
      .map((line, index) => text(RAMP_WORDS.left, RAMP_BORDER + 4 * (index + 0.8), 3.2, line)),
    ...lines.flatMap((line) => numberedLine(line, written(line * every), zero - line * spacing, spacing)),
    ...drawTexture(layout),
    ...rampMarks(layout).flatMap(drawMark),
  ];
  return { drawing: { width: millimetres(RAMP_WIDTH), height: layout.height, shapes }, layout };
}

/** Room for a number at the edge, and length of a line beside the texture. */
const NUMBER = 14;
const LINE = (RAMP_WIDTH - TEXTURE_WIDTH) / 2 - RAMP_BORDER - NUMBER - 4;

/** Numbers stand left and right by turns; the zero line runs on both sides. Positive is behind the target. */
function numberedLine(line: number, label: string, y: number, spacing: number): Shape[] {
  const size = Math.min(4, Math.max(1.6, spacing * 0.7));
  const left = RAMP_BORDER + NUMBER;
  const right = RAMP_WIDTH - left - LINE;
  if (line === 0) {
    const thick = Math.min(1, spacing / 3);
    const whole = [rectangle(RAMP_BORDER, y - thick / 2, LINE + NUMBER, thick), rectangle(right, y - thick / 2, LINE + NUMBER, thick)];
    return [...whole, text(RAMP_WIDTH - RAMP_BORDER - 4, y - 1, size, label)];
  }
  const thick = Math.min(0.5, spacing / 6);
  const onLeft = line % 2 === 0;
  const number = onLeft ? RAMP_BORDER + 7 : RAMP_WIDTH - RAMP_BORDER - 7;
  return [rectangle(onLeft ? left : right, y - thick / 2, LINE, thick), text(number, y + size * 0.35, size, label, 'middle')];
}

/** The lean a ramp was really set up at, from how far its upper end stands back and the length of its face. */
export function rampLean(setBack: Millimetres, face: Millimetres): Result<Degrees, BenchFault> {
  if (setBack > 0 && setBack < face) return got(fromRadians(Math.asin(setBack / face)));
  return failed({ is: 'set-back too large' });
}

/** Focus error in millimetres from the number beside the sharpest line; positive is behind the target. */
export function rampError(reading: number, lean: Degrees = RAMP_LEAN, factor: PrintFactor = TRUE_SIZE): Result<number, BenchFault> {
  if (lean < 10 || lean > 80) return failed({ is: 'lean too steep or flat' });
  if (!Number.isFinite(reading)) return failed({ is: 'no ramp line' });
  return got((reading * factor * Math.sin(radians(lean))) / Math.sin(radians(RAMP_LEAN)));
}

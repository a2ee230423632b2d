// The strip in pixels: a ruler of the corrections, the belief about the centre standing on it as a hill, and under each
// value the marks of its holds. All arithmetic of the drawing is here; the component only writes it down as SVG.
import { valuesOf, writeSteps, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { drawnMark, rowsOf, type DrawnMark, type MarkedHold } from './marks.ts';
import { wholeOf, windowOf, type Window } from './window.ts';

export interface StripMatter {
  readonly scale: Scale;
  readonly holds: readonly MarkedHold[];
  /** The centre's probability, lowest first, on an even grid. */
  readonly profile: readonly { readonly at: number; readonly chance: number }[];
  readonly interval: { readonly from: number; readonly to: number };
  /** The value being worked on, or the one that came out. */
  readonly current: Steps | null;
  /** The band, once it is known. */
  readonly band: { readonly low: Steps; readonly high: Steps } | null;
}

interface Label {
  readonly x: number;
  readonly text: string;
}

export interface StripLayout {
  readonly height: number;
  readonly window: Window;
  readonly ruler: { readonly y: number; readonly height: number };
  readonly ticks: readonly { readonly x: number; readonly major: boolean }[];
  readonly labels: readonly Label[];
  /** Path of the hill, from the left end of the ruler to its right end. */
  readonly hill: string;
  readonly marks: readonly DrawnMark[];
  readonly cursor: (Label & { readonly left: number; readonly width: number }) | null;
  readonly band: { readonly left: number; readonly width: number } | null;
  /** The whole scale as a thin line, while only a part of it is shown. */
  readonly locator: LocatorLine | null;
}

export interface LocatorLine {
  readonly y: number;
  readonly left: number;
  readonly right: number;
  readonly ends: readonly [Label, Label];
  readonly shown: { readonly left: number; readonly width: number };
  readonly holds: readonly number[];
}

const HILL = 34;
const RULER = 20;
const ROW_GAP = 3;
const LOCATOR = 16;
const MARK_AND_TRIANGLE = 14;
/** Widths of the label face, on the generous side: no system font is wider. */
const CHARACTER = 8;
/** Room between the cursor and the nearest label. */
const BESIDE_CURSOR = 3;
const STRIDES = [1, 2, 5, 10, 20, 50, 100];

export interface Axis {
  /** Room at either side, so that nothing overhangs. */
  readonly inset: number;
  /** Pixels from one value of the scale to the next. */
  readonly cell: number;
  readonly xOf: (value: number) => number;
}

/** Where the values between two of them lie in a width: for the strip, and for what is drawn in line with it. */
export function axisOf(scale: Scale, { from, to }: Pick<Window, 'from' | 'to'>, width: number): Axis {
  const inset = Math.max(MARK_AND_TRIANGLE, halfLabel(writeSteps(scale.min).length), halfLabel(writeSteps(scale.max).length));
  const perStep = (width - 2 * inset) / (to - from);
  return { inset, cell: perStep * scale.step, xOf: (value) => inset + (value - from) * perStep };
}

/** Lays the strip out at a width in pixels; `whole`: with all of the scale, whatever is known. */
export function layOut(matter: StripMatter, width: number, whole = false): StripLayout {
  const { scale, holds, current, band } = matter;
  const window = whole ? wholeOf(scale) : windowOf(scale, matter);
  const { inset, cell, xOf } = axisOf(scale, window, width);
  const inWindow = ({ value }: { value: number }): boolean => value >= window.from && value <= window.to;

  const markSize = Math.min(12, Math.max(8, 0.7 * cell));
  const placed = rowsOf(holds.filter(inWindow), xOf, markSize);
  const firstRow = HILL + RULER + ROW_GAP;
  const rowHeight = markSize + ROW_GAP;
  const marksEnd = firstRow + Math.max(1, ...placed.map(({ row }) => row + 1)) * rowHeight;
  const cursor = current === null || !inWindow({ value: current }) ? null : cursorAt(current, xOf, cell);
  const stride = strideOf(scale, cell);
  return {
    height: marksEnd + (window.whole ? 0 : LOCATOR),
    window,
    ruler: { y: HILL, height: RULER },
    ticks: valuesOf({ ...scale, min: window.from, max: window.to }).map((value) => ({
      x: xOf(value),
      major: value % stride === 0,
    })),
    labels: labelsOf(window, scale, stride, xOf, cursor),
    hill: hillOf(matter, window, xOf),
    marks: placed.map((mark) => drawnMark(mark, firstRow + mark.row * rowHeight, markSize)),
    cursor,
    band: band && bandAt(band, window, xOf, cell),
    locator: window.whole ? null : locatorOf(matter, window, width, inset, marksEnd + LOCATOR / 2),
  };
}

const halfLabel = (characters: number): number => (characters * CHARACTER) / 2 + 1;

/** The shortest round stride whose labels do not touch. */
function strideOf({ step }: Scale, cell: number): number {
  const room = 2 * halfLabel(3) + 6;
  return step * (STRIDES.find((count) => count * cell >= room) ?? 200);
}

function labelsOf(window: Window, scale: Scale, stride: number, xOf: (value: number) => number, cursor: StripLayout['cursor']): Label[] {
  return valuesOf({ ...scale, min: window.from, max: window.to })
    .filter((value) => value % stride === 0)
    .map((value) => ({ x: xOf(value), text: writeSteps(value) }))
    .filter(({ x, text }) => !cursor || Math.abs(x - cursor.x) >= halfLabel(text.length) + cursor.width / 2 + BESIDE_CURSOR);
}

function cursorAt(value: Steps, xOf: (value: number) => number, cell: number): StripLayout['cursor'] {
  const text = writeSteps(value);
  const width = Math.max(cell, 2 * halfLabel(text.length));
  return { x: xOf(value), text, left: xOf(value) - width / 2, width };
}

function bandAt(band: { low: Steps; high: Steps }, window: Window, xOf: (value: number) => number, cell: number) {
  const left = xOf(Math.max(band.low, window.from)) - cell / 2;
  const right = xOf(Math.min(band.high, window.to)) + cell / 2;
  return { left, width: right - left };
}

/** The hill grows as the belief narrows: its height goes with the root of the belief in its likeliest step. */
function hillOf({ profile, scale }: StripMatter, window: Window, xOf: (value: number) => number): string {
  const smooth = profile.map(({ at, chance }, index) => ({
    at,
    chance: (chance + (profile[index - 1]?.chance ?? 0) / 2 + (profile[index + 1]?.chance ?? 0) / 2) / 2,
  }));
  const peak = Math.max(...smooth.map(({ chance }) => chance));
  const spacing = profile.length > 1 ? ((profile.at(-1)?.at ?? 0) - (profile[0]?.at ?? 0)) / (profile.length - 1) : scale.step;
  const height = Math.min(1, Math.sqrt((peak * scale.step) / spacing)) * (HILL - 2);
  const line = smooth
    .filter(({ at }) => at >= window.from && at <= window.to)
    .map(({ at, chance }) => `L${round(xOf(at))} ${round(HILL - (chance / peak) * height)}`);
  return `M${round(xOf(window.from))} ${HILL}${line.join('')}L${round(xOf(window.to))} ${HILL}`;
}

function locatorOf({ scale, holds }: StripMatter, window: Window, width: number, inset: number, y: number): LocatorLine {
  const low = writeSteps(scale.min);
  const high = writeSteps(scale.max);
  const left = 2 * halfLabel(low.length) + 4;
  const right = width - 2 * halfLabel(high.length) - 4;
  const xOf = (value: number): number => left + ((value - scale.min) / (scale.max - scale.min)) * (right - left);
  return {
    y,
    left,
    right,
    ends: [
      { x: inset, text: low },
      { x: width - inset, text: high },
    ],
    shown: { left: xOf(window.from), width: xOf(window.to) - xOf(window.from) },
    holds: [...new Set(holds.map(({ value }) => xOf(value)))],
  };
}

const round = (pixels: number): number => Math.round(pixels * 10) / 10;

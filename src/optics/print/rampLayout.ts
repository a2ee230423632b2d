// Where everything lies on the ramp's face. All follows from how its lines are numbered, which the dots of its marks say, so
// that a photograph in which they are read gives the depth of every point.
import { millimetres, type Millimetres } from '../../units.ts';
import { degrees, radians, type Degrees } from '../quantity.ts';
import type { Point } from './drawing.ts';
import { fourMarks, type PrintMark } from './marks.ts';

/** The lean the ramp is drawn for. */
export const RAMP_LEAN: Degrees = degrees(45);

export const RAMP_WIDTH = 127;
export const RAMP_BORDER = 6;
/** Room for words above the face. */
const WORDS = 24;
/** Side of a mark's box; white between it and the outermost line. */
const BOX = 14;
const CLEAR = 6;
/** How far the middles of the left marks lie from the left edge. */
export const LEFT_MARKS = RAMP_BORDER + BOX / 2;
/** Longest face that fits either paper with its words and marks. */
const LONGEST = 200;

/** What the dots say: depth between numbered lines, and how many there are to either side of the zero line. */
export interface RampNumbering {
  readonly every: Millimetres;
  readonly count: number;
}

export interface RampLayout extends RampNumbering {
  /** Depth to either side of the target that its lines reach, once it leans as drawn. */
  readonly reach: Millimetres;
  /** From the zero line to the outermost, along the face. */
  readonly half: number;
  /** Height of the zero line on the page, and of the page. */
  readonly zero: number;
  readonly height: Millimetres;
}

/** Lines that span about one and a half times the depth of field, as far as a sheet allows. */
export function numberRamp(depthOfField: Millimetres | 'infinite'): RampNumbering {
  const most = (LONGEST / 2) * Math.sin(radians(RAMP_LEAN));
  const wanted = depthOfField === 'infinite' ? most : Math.min(most, Math.max(0.75 * depthOfField, 3));
  const every = EVERY.reduce((best, next) => (Math.abs(Math.log((7 * next) / wanted)) < Math.abs(Math.log((7 * best) / wanted)) ? next : best));
  return { every: millimetres(every), count: Math.max(2, Math.floor(wanted / every + 1e-9)) };
}

/** Depths from line to line that a ramp may have; their place is what the dots say. */
const EVERY = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20] as const;

export function layOutRamp({ every, count }: RampNumbering): RampLayout {
  const reach = count * every;
  const half = reach / Math.sin(radians(RAMP_LEAN));
  const zero = RAMP_BORDER + WORDS + CLEAR + half;
  return { every, count, reach: millimetres(reach), half, zero, height: millimetres(zero + half + CLEAR + BOX + RAMP_BORDER) };
}

/** Depth of a height on the page; positive is behind the target. */
export const rampDepth = ({ zero }: RampLayout, y: number): number => (zero - y) * Math.sin(radians(RAMP_LEAN));

/** The marks beyond the face's four corners, in millimetres of the page. */
export function rampMarks({ every, count, half, zero }: RampLayout): PrintMark[] {
  const middle: Point = { x: RAMP_WIDTH / 2, y: zero };
  const apart: Point = { x: RAMP_WIDTH - 2 * RAMP_BORDER - BOX, y: 2 * (half + CLEAR) + BOX };
  return fourMarks('ramp', EVERY.findIndex((each) => each === every) * 16 + count, middle, apart, BOX);
}

/** The numbering that a ramp's dots say; null where no ramp is numbered so. */
export function readRampNumber(number: number): RampNumbering | null {
  const every = EVERY[number >> 4];
  const count = number & 15;
  return every === undefined || count < 2 ? null : { every: millimetres(every), count };
}

/** Where words stand: between the upper marks. */
export const RAMP_WORDS = { left: RAMP_BORDER + BOX + 4, width: RAMP_WIDTH - 2 * (RAMP_BORDER + BOX + 4) };

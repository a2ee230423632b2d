// What the dots of four marks say: a number of nine bits, five check bits, and two dots that tell which way is up. The
// check is the remainder by x^5 + x^2 + 1, which finds every one or two misread dots (W. W. Peterson & D. T. Brown, Cyclic
// Codes for Error Detection, Proc. IRE 49:228, 1961). A mask over it tells the prints apart, and layouts still to come.

/** Four marks of four dots, each read row by row; true is a white dot. */
export type Dots = readonly boolean[];
export type PrintKind = 'target' | 'ramp';

const NUMBER_BITS = 9;
const CHECK_BITS = 5;
const GENERATOR = 0b100101;
/** Over the check bits. A layout whose lengths differ takes masks of its own. */
const MASKS: Record<PrintKind, number> = { target: 0b10110, ramp: 0b01011 };

/** The dots for a number from 0 to 511. The first is always white and the last never, so that half a turn shows. */
export function dotsFor(kind: PrintKind, number: number): Dots {
  const word = (number << CHECK_BITS) | (remainder(number) ^ MASKS[kind]);
  return [true, ...bits(word, NUMBER_BITS + CHECK_BITS), false];
}

/** The number that the dots say; null where they are not those of such a print, or one was misread. */
export function readDots(kind: PrintKind, dots: Dots): number | null {
  if (dots.length !== NUMBER_BITS + CHECK_BITS + 2 || dots[0] !== true || dots.at(-1) !== false) return null;
  const word = dots.slice(1, -1).reduce((sum, dot) => 2 * sum + (dot ? 1 : 0), 0);
  const number = word >> CHECK_BITS;
  return (word & 0b11111) === (remainder(number) ^ MASKS[kind]) ? number : null;
}

function remainder(number: number): number {
  let rest = number << CHECK_BITS;
  for (let bit = NUMBER_BITS - 1; bit >= 0; bit--) if (rest & (1 << (bit + CHECK_BITS))) rest ^= GENERATOR << bit;
  return rest;
}

const bits = (word: number, count: number): boolean[] => Array.from({ length: count }, (_, index) => ((word >> (count - 1 - index)) & 1) === 1);

// Targets printed before there were dots: four solid squares, seven bars wide and leaning by as much, at the field's corners. Their
// size cannot be read, so nothing is measured on them; they are told apart so that a person knows why.
import { BAR_COUNTS } from '../optics/print/sequence.ts';
import { arrangementsIn, FLAT, type Spacing } from './arrangement.ts';
import { FIELD_AGREES, fieldPatterns } from './fieldPatterns.ts';
import { readMarks } from './fourMarks.ts';
import type { SquaresSeen } from './squaresSeen.ts';

/** A unit of a mark, a ninth of its box, was so much of a bar. */
const BAR = 9 / 7;
/** White between field and square was 1.5 bars, at least 1 mm and at most 4 mm: from a twentieth of the widest bar on. */
const GAPS = [0.05, 3.34] as const;
const SPACINGS: readonly Spacing[] = BAR_COUNTS.map((bars) => ({
  kind: 'target',
  ...FLAT,
  agrees: FIELD_AGREES,
  patterns: fieldPatterns(bars, 7, [GAPS[0], GAPS[1]]),
  across: [BAR * (bars - 7), BAR * (bars - 7)],
  down: [BAR * (bars + 7 + 2 * GAPS[0]), BAR * (bars + 7 + 2 * GAPS[1])],
}));

export function hasSolidSquares(seen: SquaresSeen): boolean {
  for (let view = 0; view < seen.views; view++) {
    if (SPACINGS.some((spacing) => arrangementsIn(seen, view, spacing).some((four) => readMarks('target', seen.picture, four).are === 'solid'))) return true;
  }
  return false;
}

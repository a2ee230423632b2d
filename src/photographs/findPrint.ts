// The way from a picture to one print, for the target and the ramp alike: from the coarsest view to the finest, quadrangles,
// arrangements, dots; then whatever the caller knows of such a print must fit. The first view that shows a print ends the search;
// a second print in it is told. What came nearest says why there is none.
import { failed, got, type Result } from '../result.ts';
import type { PrintKind } from '../optics/print/dots.ts';
import { MARK_NAMES } from '../optics/print/marks.ts';
import { arrangementsIn, type Spacing } from './arrangement.ts';
import { READABLE_SIDE, unlit, type FindFault } from './findFault.ts';
import { readMarks, type FourQuads } from './fourMarks.ts';
import { distanceBetween } from './quad.ts';
import type { SquaresSeen } from './squaresSeen.ts';

export interface PrintSearch<Found> {
  readonly kind: PrintKind;
  readonly spacings: readonly Spacing[];
  /** The print that marks with this number make, or null where they do not fit one. */
  readonly fit: (number: number, quads: FourQuads, spacing: Spacing) => Found | null;
}

export function findPrint<Found>(seen: SquaresSeen, { kind, spacings, fit }: PrintSearch<Found>): Result<Found, FindFault> {
  let nearest: FindFault | null = null;
  for (let view = 0; view < seen.views; view++) {
    const found: { print: Found; quads: FourQuads }[] = [];
    for (const spacing of spacings) {
      for (const arrangement of arrangementsIn(seen, view, spacing)) {
        const marks = readMarks(kind, seen.picture, arrangement);
        if (marks.are !== 'read') {
          nearest = nearer(nearest, faultOf(marks));
          continue;
        }
        const print = fit(marks.number, marks.quads, spacing);
        if (print === null) nearest = nearer(nearest, { is: 'marks unread' });
        else if (!found.some(({ quads }) => sameMarks(quads, marks.quads))) found.push({ print, quads: marks.quads });
      }
    }
    const [first, second] = found;
    if (second) return failed({ is: 'two prints' });
    if (first) return got(first.print);
  }
  return failed(nearest ?? unlit(seen.whole().plane) ?? { is: 'no print' });
}

function faultOf(marks: Exclude<ReturnType<typeof readMarks>, { are: 'read' }>): FindFault | null {
  switch (marks.are) {
    case 'three':
      return { is: 'half a print', missing: MARK_NAMES.filter((_, index) => marks.quads[index] === null) };
    case 'unread':
      return marks.side < READABLE_SIDE ? { is: 'print too small', side: marks.side } : { is: 'marks unread' };
    case 'solid':
    case 'no marks':
      return null;
  }
}

/** What tells more goes before what tells less. */
const ORDER: readonly FindFault['is'][] = ['half a print', 'print too small', 'marks unread'];
function nearer(one: FindFault | null, other: FindFault | null): FindFault | null {
  if (one === null || other === null) return one ?? other;
  return ORDER.indexOf(other.is) < ORDER.indexOf(one.is) ? other : one;
}

/** Prints do not overlap: a mark in common, in whatever order, is the same print. */
function sameMarks(one: FourQuads, other: FourQuads): boolean {
  return one.some((a) => other.some((b) => a && b && distanceBetween(a[0], b[0]) < 0.5 * distanceBetween(a[0], a[2])));
}

// The target in a picture: where its drawn millimetres fall, how large it appears and how it is turned, and its slanted edges in
// pixels. Millimetres count from the middle of its field, right and down, as drawn: how large a print came out on paper counts where lengths are told (`focusReading.ts`).
import { failed, got, type Result } from '../result.ts';
import type { Point } from '../optics/print/drawing.ts';
import { MARK_BOX, markCorners } from '../optics/print/marks.ts';
import { sizesOf, type TargetSizes } from '../optics/print/measure.ts';
import { BAR_COUNTS } from '../optics/print/sequence.ts';
import { FIELD_MIDDLE, middleSquare, targetEdges, targetMarks } from '../optics/print/targetMarks.ts';
import { degrees, fromRadians, type Degrees } from '../optics/quantity.ts';
import { FLAT, type Spacing } from './arrangement.ts';
import { FIELD_AGREES, fieldPatterns } from './fieldPatterns.ts';
import type { FindFault } from './findFault.ts';
import { findPrint } from './findPrint.ts';
import type { FourQuads } from './fourMarks.ts';
import { robustHomography, through, type Homography, type PointPair } from './homography.ts';
import { affineAt } from './localScale.ts';
import { hasSolidSquares } from './olderPrint.ts';
import { boxOf, type PixelSource } from './pixelSource.ts';
import { distanceBetween, type Quad } from './quad.ts';
import { sharpQuad } from './sharpQuad.ts';
import type { SquaresSeen } from './squaresSeen.ts';

export interface FoundEdge {
  readonly at: 'middle' | 'corner';
  readonly runs: 'upright' | 'level';
  /** In pixels. */
  readonly from: Point;
  readonly to: Point;
}

export interface FoundTarget {
  /** From drawn millimetres, counted from the field's middle, to pixels. */
  readonly toPicture: Homography;
  /** What was drawn: the width of its bars, and all that follows from it. */
  readonly sizes: TargetSizes;
  /** Pixels to a drawn millimetre in the middle. */
  readonly scale: number;
  /** How it is turned in the picture, from -180 to 180: positive is clockwise. */
  readonly roll: Degrees;
  /** Those in the middle first. */
  readonly edges: readonly FoundEdge[];
  /** Middles of its marks in pixels, row by row. */
  readonly marks: readonly Point[];
}

/** White between the field and a mark, in bars: from one and a half to what a millimetre is in the narrowest bars. */
const GAP = [1.5, 3.34] as const;
const SPACINGS: readonly Spacing[] = BAR_COUNTS.map((bars) => ({
  kind: 'target',
  ...FLAT,
  agrees: FIELD_AGREES,
  patterns: fieldPatterns(bars, MARK_BOX, GAP),
  across: [bars - MARK_BOX, bars - MARK_BOX],
  down: [bars + MARK_BOX + 2 * GAP[0], bars + MARK_BOX + 2 * GAP[1]],
}));
/** The picture of a plane so tilted is narrower one way by 4 %; sharpness then differs across the target by more than by focus. */
const MOST_TILT = 16;

export function findTarget(seen: SquaresSeen): Result<FoundTarget, FindFault> {
  const found = findPrint(seen, { kind: 'target', spacings: SPACINGS, fit: (number, quads, spacing) => fitTarget(seen.picture, number, quads, spacing) });
  if (!found.ok) return found.fault.is === 'half a print' || !hasSolidSquares(seen) ? found : failed({ is: 'older print' });
  const { tilt } = affineAt(found.value.toPicture, FIELD_MIDDLE);
  return tilt > MOST_TILT ? failed({ is: 'print too tilted', tilt: degrees(tilt) }) : got(found.value);
}

function fitTarget(picture: PixelSource, index: number, quads: FourQuads, spacing: Spacing): FoundTarget | null {
  const bars = BAR_COUNTS[SPACINGS.indexOf(spacing)];
  if (bars === undefined) return null;
  const sizes = sizesOf(bars, index);
  const marks = targetMarks(sizes);
  const pairs = marks.flatMap((mark, place) => pairsOf(markCorners(mark), quads[place] ?? null));
  const unit = distanceBetween(quads[0]?.[0] ?? FIELD_MIDDLE, quads[0]?.[1] ?? FIELD_MIDDLE) / 8.3;
  const within = Math.max(0.6, 0.12 * unit);
  const outer = robustHomography(pairs, within);
  if (outer === null) return null;
  // The square in the middle must be there, too, and makes the middle surer.
  const square = markCorners(middleSquare(sizes)).map((corner) => through(outer.homography, corner));
  const [a, b, c, d] = square;
  const middle = a && b && c && d ? sharpQuad(picture.around(boxOf(square, distanceBetween(a, c) / 2)), [a, b, c, d], MIDDLE_REACH) : null;
  if (middle === null) return null;
  const all = robustHomography([...pairs, ...pairsOf(markCorners(middleSquare(sizes)), middle)], within);
  if (all === null) return null;
  const toPicture = all.homography;
  const { scale, turn } = affineAt(toPicture, FIELD_MIDDLE);
  return {
    toPicture,
    sizes,
    scale,
    roll: fromRadians(turn),
    edges: targetEdges(sizes).map(({ at, runs, from, to }) => ({ at, runs, from: through(toPicture, from), to: through(toPicture, to) })),
    marks: marks.map((mark) => through(toPicture, mark.middle)),
  };
}

/** Its ground is white for a bar and a half, and its side is six and a half bars long. */
const MIDDLE_REACH = 1.25 / 6.46;

const pairsOf = (corners: readonly Point[], quad: Quad | null): PointPair[] =>
  corners.flatMap((from, index) => (quad?.[index] ? [{ from, to: quad[index] }] : []));

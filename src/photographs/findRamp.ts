// The ramp in a picture, by itself: it leans, so its plane is another one than the target's. Its dots say how its lines are
// numbered, and so the depth of every point on its face, for the lean it is drawn for.
import type { Result } from '../result.ts';
import type { Point } from '../optics/print/drawing.ts';
import { markCorners } from '../optics/print/marks.ts';
import { layOutRamp, rampDepth, rampMarks, readRampNumber, type RampLayout } from '../optics/print/rampLayout.ts';
import { textureEdges } from '../optics/print/rampTexture.ts';
import type { Spacing } from './arrangement.ts';
import type { FindFault } from './findFault.ts';
import { findPrint } from './findPrint.ts';
import type { FourQuads } from './fourMarks.ts';
import { robustHomography, through, type Homography } from './homography.ts';
import { stripePattern } from './pattern.ts';
import { distanceBetween } from './quad.ts';
import type { SquaresSeen } from './squaresSeen.ts';

interface FoundRampEdge {
  /** In pixels, from the nearer end to the farther. */
  readonly from: Point;
  readonly to: Point;
  /** Millimetres behind the target, negative in front of it, at either end. */
  readonly depthFrom: number;
  readonly depthTo: number;
  /** On which side of the way from one end to the other black lies. */
  readonly dark: 'left' | 'right';
}

export interface FoundRamp {
  /** From millimetres of the ramp's page, its upper left corner at 0, 0, to pixels. */
  readonly toPicture: Homography;
  readonly layout: RampLayout;
  readonly edges: readonly FoundRampEdge[];
  /** Middles of its marks in pixels, row by row. */
  readonly marks: readonly Point[];
}

/** A mark's box of 14 mm is nine units; marks stand 101 mm apart across, and down as far as the numbering goes. */
const UNIT = 14 / 9;
/** So few stripes can be met by chance: they must agree well. */
const STRIPES_AGREE = 0.6;
const STRIPES = [stripePattern()];
/** It leans by 45°: seen from a metre away, its far end is an eighth smaller across than its near end, and a quarter down. */
const SPACING: Spacing = {
  kind: 'ramp',
  alike: 0.5,
  astray: 0.12,
  agrees: STRIPES_AGREE,
  patterns: () => STRIPES,
  across: [101 / UNIT, 101 / UNIT],
  down: [30 / UNIT, 226 / UNIT],
};

export function findRamp(seen: SquaresSeen): Result<FoundRamp, FindFault> {
  return findPrint(seen, { kind: 'ramp', spacings: [SPACING], fit: fitRamp });
}

function fitRamp(number: number, quads: FourQuads): FoundRamp | null {
  const numbering = readRampNumber(number);
  if (numbering === null) return null;
  const layout = layOutRamp(numbering);
  const marks = rampMarks(layout);
  const pairs = marks.flatMap((mark, place) => markCorners(mark).flatMap((from, index) => (quads[place]?.[index] ? [{ from, to: quads[place][index] }] : [])));
  const unit = distanceBetween(quads[0]?.[0] ?? { x: 0, y: 0 }, quads[0]?.[1] ?? { x: 0, y: 0 }) / 8.3;
  const fitted = robustHomography(pairs, Math.max(0.6, 0.12 * unit));
  if (fitted === null) return null;
  const toPicture = fitted.homography;
  return {
    toPicture,
    layout,
    edges: textureEdges(layout).map(({ from, to, dark }) => ({
      from: through(toPicture, from),
      to: through(toPicture, to),
      depthFrom: rampDepth(layout, from.y),
      depthTo: rampDepth(layout, to.y),
      dark,
    })),
    marks: marks.map((mark) => through(toPicture, mark.middle)),
  };
}

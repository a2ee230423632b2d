// What one picture shows: the target in it, how sharp its edges are, and where focus fell along the ramp. Each part is there or
// is a fault of its own, so that what one lacks takes nothing from the others.
import { failed, got, type Result } from '../result.ts';
import { FIELD_MIDDLE } from '../optics/print/targetMarks.ts';
import type { Point } from '../optics/print/drawing.ts';
import { degrees, type Degrees } from '../optics/quantity.ts';
import type { PictureFacts } from './cameraFacts.ts';
import { changedSize } from './changedSize.ts';
import { measureEdge, type EdgeFault, type EdgeMeasure } from './edge.ts';
import type { FindFault } from './findFault.ts';
import { findTarget, type FoundEdge, type FoundTarget } from './findTarget.ts';
import { readFocus, type FocusUntold, type FocusReading } from './focusReading.ts';
import { affineAt } from './localScale.ts';
import { motionIn, type Motion } from './motion.ts';
import { boxOf, type PixelSource } from './pixelSource.ts';
import { READ_BESIDE } from './settledEdge.ts';
import { lookAt } from './squaresSeen.ts';

export interface PictureReading {
  readonly target: Result<TargetReading, FindFault>;
  readonly focus: Result<FocusReading, FocusUntold>;
}

export interface TargetReading {
  /** Middles of its marks in pixels, clockwise from the upper left one. */
  readonly outline: readonly Point[];
  /** Pixels to a millimetre of the print in the middle. */
  readonly scale: number;
  readonly roll: Degrees;
  /** Out of square to the camera, from the narrowing alone. */
  readonly tilt: Degrees;
  /** Of what the camera took, the share of each side that the file was resized to; null where it was not, as far as is known. */
  readonly resized: number | null;
  /** Of its middle. */
  readonly motion: Motion;
  /** An upright and a level one in the middle, and one at each corner where it can be measured. */
  readonly edges: readonly EdgeReading[];
  /** An upright and a level one in the middle, the same ones in every picture, to be looked at side by side. */
  readonly compared: readonly FoundEdge[];
}

export interface EdgeReading {
  readonly edge: FoundEdge;
  readonly measure: Result<EdgeMeasure, EdgeFault>;
}

/** `random` gives numbers from 0 to below 1, for the intervals. */
export function readPicture(picture: PixelSource, facts: PictureFacts, random: () => number): PictureReading {
  const seen = lookAt(picture);
  const found = findTarget(seen);
  if (!found.ok) return { target: found, focus: failed({ is: 'no target' }) };
  return { target: got(targetReading(picture, found.value, facts, random)), focus: readFocus(seen, found.value, facts) };
}

function targetReading(picture: PixelSource, target: FoundTarget, { frame, printed }: PictureFacts, random: () => number): TargetReading {
  const [upperLeft, upperRight, lowerLeft, lowerRight] = target.marks;
  const tilt = degrees(affineAt(target.toPicture, FIELD_MIDDLE).tilt);
  const outline = [upperLeft, upperRight, lowerRight, lowerLeft].filter((point) => point !== undefined);
  const read = target.edges.map((edge) => ({ edge, measure: measureEdge(picture.around(boxOf([edge.from, edge.to], READ_BESIDE)), edge, random) }));
  const size = frame && changedSize(frame, picture);
  const resized = size?.is === 'resized' ? size.share : null;
  const motion = motionIn(read.flatMap(({ edge, measure }) => (edge.at === 'middle' && measure.ok ? [measure.value] : [])));
  return { outline, scale: target.scale / printed, roll: target.roll, tilt, resized, motion, edges: chosen(read), compared: comparedAmong(target.edges) };
}

const comparedAmong = (edges: readonly FoundEdge[]): FoundEdge[] =>
  (['upright', 'level'] as const).flatMap((way) => edges.find(({ at, runs }) => at === 'middle' && runs === way) ?? []);

/** Each square has four sides: of each two that run alike, the surer one. */
function chosen(read: readonly EdgeReading[]): EdgeReading[] {
  const best: EdgeReading[] = [];
  for (let from = 0; from < read.length; from += 4) {
    for (const runs of ['upright', 'level'] as const) {
      const sides = read.slice(from, from + 4).filter(({ edge }) => edge.runs === runs);
      const first = sides.toSorted((one, other) => widthOf(one) - widthOf(other))[0];
      if (first) best.push(first);
    }
  }
  return best;
}

const widthOf = ({ measure }: EdgeReading): number => (measure.ok ? Math.log(measure.value.interval.high / measure.value.interval.low) : Infinity);

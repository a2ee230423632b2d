// One picture of the range in which the target must be found, drawn by chance, and how far off its marks were found.
import { targetMarks } from '../../../src/optics/print/targetMarks.ts';
import { findTarget } from '../../../src/photographs/findTarget.ts';
import { wholePicture } from '../../../src/photographs/pixelSource.ts';
import { lookAt } from '../../../src/photographs/squaresSeen.ts';
import type { Random } from '../../../src/practice/random.ts';
import { targetFor } from './prints.ts';
import { quickPicture, USUAL_QUICK } from './quickPicture.ts';

/**
 * Drawn for one distance and photographed from up to half as far again, at 24 megapixels, or 6 where it is large; every fifth is turned
 * whichever way. The four distances from mark to mark in pixels; null where it was not found, or with another size.
 */
export function findDrawn(random: Random, index: number): number[] | null {
  const between = (least: number, most: number) => least + random() * (most - least);
  const spread = (least: number, most: number) => least * (most / least) ** random();
  const share = spread(0.08, 0.6);
  const guess = targetFor(1 / 48, between(1.5, 5)).drawing.height;
  const m = (share * 24) / guess;
  const target = targetFor(Math.min(0.2, m * between(0.67, 1.5)), between(1, 3.5));
  const shown = Math.min(m, (0.6 * 24) / target.drawing.height);
  const focalLength = spread(24, 300);
  const [tilt, way] = [between(0, 8), between(0, 2 * Math.PI)];
  const pose = {
    lean: tilt * Math.sin(way),
    swing: tilt * Math.cos(way),
    roll: index % 5 === 4 ? between(-180, 180) : between(-5, 5),
    right: between(-3, 3) / shown,
    down: between(-2, 2) / shown,
  };
  const frame = share > 0.25 ? { width: 3000, height: 2000 } : USUAL_QUICK.frame;
  const shot = { ...USUAL_QUICK, frame, focalLength, distance: focalLength * (1 + 1 / shown), pose, disc: between(0, 6), noise: between(0.005, 0.05) };
  const picture = quickPicture([target.drawing], { ...shot, fall: between(0.4, 1), exposure: between(0.3, 1.05), around: between(0.03, 0.2) }, index);
  const seen = findTarget(lookAt(wholePicture(picture.plane)));
  if (!seen.ok || seen.value.sizes.index !== target.measure.index || seen.value.sizes.bars !== target.measure.bars) return null;
  return targetMarks(target.measure, target.middle).map((mark, place) => {
    const [is, was] = [seen.value.marks[place]!, picture.at(0, mark.middle)];
    return Math.hypot(is.x - was.x, is.y - was.y);
  });
}

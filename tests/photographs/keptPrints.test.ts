// Where target and ramp are found in whole pictures, kept so that no change of it goes unnoticed.
import { expect, test } from 'vitest';
import { leaningSquare, rectangle, type Drawing } from '../../src/optics/print/drawing.ts';
import { targetMarks } from '../../src/optics/print/targetMarks.ts';
import { findRamp } from '../../src/photographs/findRamp.ts';
import { findTarget } from '../../src/photographs/findTarget.ts';
import { through, type Homography } from '../../src/photographs/homography.ts';
import { wholePicture } from '../../src/photographs/pixelSource.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import { lookAt } from '../../src/photographs/squaresSeen.ts';
import { mountRamp } from '../../src/practice/pictures/mounted.ts';
import { SQUARE } from '../../src/practice/pictures/shot.ts';
import { kept } from '../kept/kept.ts';
import { summed } from '../kept/summed.ts';
import { rampFor, targetFor, unmarked } from './pictures/prints.ts';
import { quickPicture, USUAL_QUICK, type QuickShot } from './pictures/quickPicture.ts';

const flat = (points: readonly { readonly x: number; readonly y: number }[]) => points.flatMap(({ x, y }) => [x, y]);
/** A picture, and the boxes whose pixels were asked for. */
const looked = (plane: Plane) => {
  const boxes: number[] = [];
  return { boxes, seen: lookAt({ ...wholePicture(plane), around: (box) => { boxes.push(...Object.values(box)); return plane; } }) }; // prettier-ignore
};
/** Where a mapping puts four points. */
const placed = (way: Homography) => flat([[0, 0], [50, 4], [-3, 70], [-40, -30]].map(([x = 0, y = 0]) => through(way, { x, y }))); // prettier-ignore
const TARGET = targetFor(1 / 48, 2.5, 0.012);
const SMALL: QuickShot = { ...USUAL_QUICK, frame: { width: 3000, height: 4000 }, noise: 0.005, around: 0.04 };

test('the target, turned, tilted, small, soft and partly covered', () => {
  const { measure, middle, drawing } = TARGET;
  const over = (box: readonly [number, number, number]): Drawing => ({
    ...drawing,
    shapes: [...drawing.shapes, rectangle(box[0] - box[2] / 2, box[1] - box[2] / 2, box[2], box[2], 'white')],
  });
  const [first, , third] = targetMarks(measure, middle);
  const side = 7 * measure.bar;
  const solid = [-1, 1].flatMap((y) =>
    [-1, 1].map((x) => leaningSquare({ x: middle.x + x * (measure.field / 2 - side / 2), y: middle.y + y * (measure.field / 2 + 4 + side / 2) }, side, 5)),
  );
  const pictures: readonly (readonly [Drawing, Partial<QuickShot>])[] = [
    [drawing, {}],
    [drawing, { pose: { ...SQUARE, roll: 37, lean: 5, swing: -4 }, disc: 2 }],
    [drawing, { pose: { ...SQUARE, swing: 15.5 } }],
    [drawing, { pose: { ...SQUARE, swing: 16.5 } }],
    [drawing, { distance: 85 * 110, disc: 0.5 }],
    [over([third!.middle.x, third!.middle.y, third!.box + 2]), {}],
    [over([middle.x, middle.y, 7 * measure.bar]), {}],
    [over([first!.middle.x - first!.box / 2, first!.middle.y, first!.box * 0.5]), {}],
    [{ ...unmarked(TARGET), shapes: [...unmarked(TARGET).shapes, ...solid] }, {}],
  ]; // prettier-ignore
  const told = () =>
    pictures.map(([of, shot], seed) => {
      const { seen, boxes } = looked(quickPicture([of], { ...SMALL, ...shot }, seed).plane);
      const found = findTarget(seen);
      if (!found.ok) return [Object.values(found.fault), summed(boxes)];
      const { toPicture, sizes, scale, roll, edges, marks } = found.value;
      return [placed(toPicture), [sizes.bars, sizes.index, scale, roll, summed(flat(marks)), summed(boxes)], edges.map((each) => `${each.at} ${each.runs}`).join(), summed(flat(edges.flatMap(({ from, to }) => [from, to])))];
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('the ramp beside it, leaning more and less', () => {
  const told = () =>
    [[40, 0], [120, 5]].map(([depth = 1, lean = 0], seed) => {
      const ramp = rampFor(depth);
      const { seen, boxes } = looked(quickPicture([TARGET.drawing, mountRamp(ramp.drawing, ramp.layout.zero, TARGET.drawing)], { ...SMALL, disc: 1.5, pose: { ...SQUARE, lean } }, seed).plane);
      const found = findRamp(seen);
      if (!found.ok) return Object.values(found.fault);
      const { toPicture, layout, edges, marks } = found.value;
      return [placed(toPicture), Object.values(layout), flat(marks), summed(boxes), edges.length, summed(edges.flatMap(({ from, to, depthFrom, depthTo, dark }) => [...flat([from, to]), depthFrom, depthTo, dark === 'left' ? 1 : 2]))];
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

// What one mark that stands where it should not does to where a print is found, kept so that no bound of it changes unnoticed.
import { expect, test } from 'vitest';
import type { Drawing, Point, Shape } from '../../src/optics/print/drawing.ts';
import { rampMarks } from '../../src/optics/print/rampLayout.ts';
import { targetMarks } from '../../src/optics/print/targetMarks.ts';
import { findRamp } from '../../src/photographs/findRamp.ts';
import { findTarget } from '../../src/photographs/findTarget.ts';
import { through, type Homography } from '../../src/photographs/homography.ts';
import { wholePicture } from '../../src/photographs/pixelSource.ts';
import { lookAt } from '../../src/photographs/squaresSeen.ts';
import { mountRamp } from '../../src/practice/pictures/mounted.ts';
import { kept } from '../kept/kept.ts';
import { rampFor, targetFor } from './pictures/prints.ts';
import { quickPicture, USUAL_QUICK } from './pictures/quickPicture.ts';

const TARGET = targetFor(1 / 48, 2.5, 0.012);
const SHOT = { ...USUAL_QUICK, frame: { width: 3000, height: 4000 }, noise: 0.003, around: 0.04 };
/** In units of the mark: a ninth of its box. */
const PULLED = [0.1, 0.3, 0.4, 0.5, 0.6, 0.8, 1.1];

/** Everything within the box is drawn so much further right. */
function pulled(drawing: Drawing, { middle, box }: { readonly middle: Point; readonly box: number }, units: number): Drawing {
  const within = ({ x, y }: Point): boolean => Math.abs(x - middle.x) < box / 2 && Math.abs(y - middle.y) < box / 2;
  const moved = ({ x, y }: Point): Point => ({ x: x + (units * box) / 9, y });
  const drawn = (shape: Shape): Shape => {
    if (shape.kind === 'polygon' && shape.corners.every(within)) return { ...shape, corners: shape.corners.map(moved) };
    return shape.kind === 'disc' && within(shape.middle) ? { ...shape, middle: moved(shape.middle) } : shape;
  };
  return { ...drawing, shapes: drawing.shapes.map(drawn) };
}

const placed = (way: Homography) => [[0, 0], [50, 4], [-3, 70]].flatMap(([x = 0, y = 0]) => Object.values(through(way, { x, y }))); // prettier-ignore

test('a target one of whose marks was pulled aside', () => {
  const mark = targetMarks(TARGET.measure, TARGET.middle)[3]!;
  const told = () =>
    PULLED.map((units) => {
      const found = findTarget(lookAt(wholePicture(quickPicture([pulled(TARGET.drawing, mark, units)], SHOT, 4).plane)));
      return found.ok ? placed(found.value.toPicture) : Object.values(found.fault);
    });
  expect(kept(told)).toMatchSnapshot();
});

test('a ramp one of whose marks was pulled aside', () => {
  const ramp = rampFor(60);
  const mark = rampMarks(ramp.layout)[3]!;
  const told = () =>
    PULLED.map((units) => {
      const mounted = mountRamp(pulled(ramp.drawing, mark, units), ramp.layout.zero, TARGET.drawing);
      const found = findRamp(lookAt(wholePicture(quickPicture([mounted], SHOT, 4).plane)));
      return found.ok ? placed(found.value.toPicture) : Object.values(found.fault);
    });
  expect(kept(told)).toMatchSnapshot();
});

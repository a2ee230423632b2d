// Contract of the corners of a mark: to a seventh of a pixel, also where a print leans and its marks are far less high than wide.
import { expect, test } from 'vitest';
import { markCorners } from '../../src/optics/print/marks.ts';
import { rampMarks } from '../../src/optics/print/rampLayout.ts';
import type { Quad } from '../../src/photographs/quad.ts';
import { sharpQuad } from '../../src/photographs/sharpQuad.ts';
import { mountRamp } from '../../src/practice/pictures/mounted.ts';
import { rampFor, targetFor } from './pictures/prints.ts';
import { quickPicture, USUAL_QUICK } from './pictures/quickPicture.ts';

test.each([0, 8])('the corners of the ramp’s marks, leaning by %s° more, lie within 0.15 pixels of the truth', (lean) => {
  const [target, ramp] = [targetFor(1 / 48, 2.5, 0.012), rampFor(150)];
  const mounted = mountRamp(ramp.drawing, ramp.layout.zero, target.drawing);
  const shot = { ...USUAL_QUICK, frame: { width: 3000, height: 4000 }, pose: { ...USUAL_QUICK.pose, lean }, noise: 0.005 };
  const { plane, at } = quickPicture([target.drawing, mounted], shot, 5);
  for (const mark of rampMarks(ramp.layout)) {
    const truth = markCorners(mark).map((corner) => at(1, corner));
    // As it is first seen, half a pixel and more off.
    const [a, b, c, d] = truth.map(({ x, y }, corner) => ({ x: x + (corner % 2 === 0 ? 0.7 : -0.5), y: y + (corner < 2 ? -0.6 : 0.6) }));
    const found = sharpQuad(plane, [a, b, c, d] as unknown as Quad, 0.15);
    for (const [corner, { x, y }] of truth.entries()) expect(Math.hypot(found![corner]!.x - x, found![corner]!.y - y)).toBeLessThan(0.15);
  }
});

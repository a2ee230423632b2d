// How the ramp stands and where focus fell in a picture, kept so that no change of it goes unnoticed.
import { expect, test } from 'vitest';
import { layOutRamp } from '../../src/optics/print/rampLayout.ts';
import { TRUE_SIZE } from '../../src/optics/print/printCheck.ts';
import { fNumber } from '../../src/optics/quantity.ts';
import type { PictureFacts } from '../../src/photographs/cameraFacts.ts';
import { findTarget } from '../../src/photographs/findTarget.ts';
import { focusInPicture } from '../../src/photographs/focusInPicture.ts';
import { readFocus } from '../../src/photographs/focusReading.ts';
import type { Homography } from '../../src/photographs/homography.ts';
import { wholePicture } from '../../src/photographs/pixelSource.ts';
import { planeOf } from '../../src/photographs/plane.ts';
import { rampPose } from '../../src/photographs/rampPose.ts';
import { readPicture } from '../../src/photographs/reading.ts';
import { hasSolidSquares } from '../../src/photographs/olderPrint.ts';
import { lookAt } from '../../src/photographs/squaresSeen.ts';
import { SQUARE } from '../../src/practice/pictures/shot.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { millimetres as mm } from '../../src/units.ts';
import { photograph } from './camera/photograph.ts';
import { rigFor } from './camera/rig.ts';
import { USUAL_SHOT } from './camera/usualShot.ts';
import { kept } from '../kept/kept.ts';
import { summed } from '../kept/summed.ts';

const flat = (points: readonly { readonly x: number; readonly y: number }[]) => points.flatMap(({ x, y }) => [x, y]);

test('how the ramp stands, by mappings of every kind', () => {
  const layout = layOutRamp({ every: mm(10), count: 6 });
  const told = () =>
    ([[3, 0.1, 250, -0.05, 2.2, 700, 0.0001, 0.0004], [3, 0.4, 150, 0.3, 2, 600, -0.0002, 0.0003], [2.5, -0.5, 480, 0.2, 2, 820, 0, 0.0005], [2, 0, 300, 0, 2.4, 700, 0, 0], [3, 0, 300, 0, 3, 700, 0, 0], [3, 0, 300, 0, 0.05, 700, 0, 0]] as const).map((way) => {
      const found = { toPicture: [...way, 1] as unknown as Homography, layout };
      const target = { toPicture: [3.1, 0.1, 460, -0.1, 3, 480, 0.00002, -0.00003, 1] as Homography };
      return [TRUE_SIZE, 0.93 as typeof TRUE_SIZE].map((printed) => {
        const pose = rampPose(found as never, target as never, { focalLength: mm(85), aperture: fNumber(1.8), distance: mm(2500), pitch: mm(0.01), printed }, { width: 900, height: 1500 });
        return pose && [pose.doubt, ...[[0, 0], [60, 90], [127, 30]].flatMap(([x = 0, y = 0]) => Object.values(pose.place({ x, y })))];
      });
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('where focus fell, for cameras that are known in part or wrongly', () => {
  const lens = { ...USUAL_SHOT.lens, focalLength: 50, aperture: 1.4, distance: 2500, focusError: -12 };
  const sensor = { ...USUAL_SHOT.sensor, width: 600, height: 1000, pitch: 0.009 };
  const { sheets } = rigFor({ lens, sensor }, 1.5);
  const { rgba, width, height } = photograph(sheets, { ...USUAL_SHOT, lens, sensor, pose: { ...SQUARE, lean: 2, swing: -2, roll: 3, down: -110 } }, 5);
  const plane = planeOf(rgba, width, height);
  const asks: number[] = [];
  const picture = { ...wholePicture(plane), around: (box: object) => { asks.push(...(Object.values(box) as number[])); return plane; } }; // prettier-ignore
  const usual: PictureFacts = { printed: TRUE_SIZE, focalLength: mm(50), aperture: fNumber(1.4), sensor: { width: mm(9), height: mm(5.4) }, frame: null };
  const facts: readonly Partial<PictureFacts>[] = [
    {}, { printed: 0.95 as typeof TRUE_SIZE }, { aperture: fNumber(0.8) }, { aperture: fNumber(0.6) }, 
    { focalLength: null }, { aperture: null, sensor: null }, { frame: { width: 2000, height: 1200 } }, { frame: { width: 1200, height: 700 } },
    { sensor: { width: mm(9), height: mm(5.25) } }, { sensor: { width: mm(9), height: mm(5.2) } }, { sensor: { width: mm(5.56), height: mm(9) } }, { sensor: { width: mm(9), height: mm(5.6) } }, 
  ]; // prettier-ignore
  const told = () => {
    const seen = lookAt(picture);
    const target = findTarget(seen);
    if (!target.ok) return target.fault;
    // Where the target stands lower and lower, the same ramp stands farther and farther behind.
    const [a, b, c, d, e, f, g, h, i] = target.value.toPicture;
    const higher = (by: number): Homography => [a, b, c - b * by, d, e, f - e * by, g, h, i - h * by];
    const raised = [[-380, 1.4], [-900, 0.5], [-700, 0.8]].map(([by = 0, aperture = 1]) => ({ by, more: { aperture: fNumber(aperture) } })); // prettier-ignore
    return [...facts.map((more) => ({ by: 0, more })), ...raised].map(({ by, more }) => {
      const one = readFocus(seen, { ...target.value, toPicture: higher(by) }, { ...usual, ...more });
      if (!one.ok) return Object.values(one.fault);
      const { ramp, depth, share, step, is, outline } = one.value;
      return [ramp.error, ...Object.values(ramp.interval), ramp.lies, ...Object.values(depth), share, step, is, summed(flat(outline))];
    });
  };
  // Moved sideways while it was taken.
  const moved = {
    ...plane,
    light: plane.light.map((_, at) => [0, 1, 2, 3].reduce((sum, off) => sum + plane.light[at + off - (at % width > width - 5 ? 3 : 0)]! / 4, 0)),
  };
  const whole = () => {
    asks.length = 0;
    const { target, focus } = readPicture({ ...wholePicture(moved), around: (box) => { asks.push(...Object.values(box)); return moved; } }, { ...usual, frame: { width: 1200, height: 2000 } }, seededRandom(4));
    if (!target.ok) return target.fault;
    const { edges, compared, motion, outline, scale, roll, tilt, resized } = target.value;
    return [focus.ok, summed(asks), flat(outline), [scale, roll, tilt, resized], motion, edges.map(({ edge, measure }) => [edge.at, edge.runs, summed(flat([edge.from, edge.to])), measure.ok ? measure.value.mtf50 : measure.fault.is]), compared.map(({ at, runs, from }) => [at, runs, from.x])];
  }; // prettier-ignore
  const optics = { focalLength: mm(50), aperture: fNumber(1.4), pitch: mm(0.009) };
  const nothing = wholePicture({ width: 40, height: 30, light: new Float32Array(1200).fill(0.4) });
  const alone = wholePicture({ ...plane, light: plane.light.map((one, at) => (at < 470 * width ? one : 0.6)) });
  const rest = () => [
    focusInPicture(picture, optics),
    summed(asks),
    focusInPicture(alone, optics),
    focusInPicture(nothing, optics),
    readPicture(nothing, usual, seededRandom(4)),
    hasSolidSquares(lookAt(picture)),
  ];
  expect(kept(() => [told(), whole(), rest()])).toMatchSnapshot();
});

// Contract of the depth of the ramp's points: as the practice camera has them, however the rig stands, wherever the ramp lies in the picture.
import { describe, expect, test } from 'vitest';
import { layOutRamp } from '../../src/optics/print/rampLayout.ts';
import { TRUE_SIZE, type PrintFactor } from '../../src/optics/print/printCheck.ts';
import { readAlong } from '../../src/photographs/followedEdge.ts';
import { normalBelow } from '../../src/photographs/normalCurve.ts';
import { rampPose } from '../../src/photographs/rampPose.ts';
import { mountRamp, mountTarget, project, projectionOf } from '../../src/practice/pictures/mounted.ts';
import { SQUARE, type Shot } from '../../src/practice/pictures/shot.ts';
import { fNumber } from '../../src/optics/quantity.ts';
import { millimetres as mm } from '../../src/units.ts';
import { USUAL_SHOT } from './camera/usualShot.ts';

const TARGET = { width: mm(190), height: mm(240), shapes: [] };
const layout = layOutRamp({ every: mm(10), count: 6 });
const RAMP = { width: mm(127), height: layout.height, shapes: [] };

function posed(pose: Partial<Shot['pose']>, printed: PrintFactor = TRUE_SIZE, lean = 45) {
  const lens = { ...USUAL_SHOT.lens, focalLength: 85, distance: 4250 };
  const shot = { ...USUAL_SHOT, lens, pose: { ...SQUARE, ...pose } };
  const [target, ramp] = [projectionOf(mountTarget(TARGET), shot), projectionOf(mountRamp(RAMP, layout.zero, TARGET, lean), shot)];
  // From the target's middle.
  const [a, b, c, d, e, f, g, h, i] = target;
  const fromMiddle = [a, b, 95 * a + 120 * b + c, d, e, 95 * d + 120 * e + f, g, h, 95 * g + 120 * h + i] as const;
  const optics = { focalLength: mm(85), aperture: fNumber(1.8), distance: mm(4250), pitch: mm(shot.sensor.pitch), printed };
  const found = rampPose({ toPicture: ramp, layout } as never, { toPicture: fromMiddle } as never, optics, shot.sensor);
  return { found, truth: (x: number, y: number) => project(ramp, x, y) };
}
const POINTS = [
  [63.5, layout.zero],
  [63.5, layout.zero - layout.half],
  [63.5, layout.zero + layout.half],
  [0, layout.zero],
  [127, layout.zero + 30],
] as const;

describe('a point of the ramp', () => {
  test.each([
    ['square', {}],
    ['leaning', { lean: 3 }],
    ['leaning the other way', { lean: -2 }],
    ['swung', { swing: 4 }],
    ['swung the other way', { swing: -3 }],
    ['rolled', { roll: 7 }],
    ['aside', { right: 150, down: -90 }],
    ['swung and rolled far below the optical axis', { swing: 10, roll: 40, down: 600 }],
    ['all together', { lean: 1.5, swing: -2, roll: 3, right: -60, down: 40 }],
  ])('lies where it falls and as deep as it stands: %s', (_, pose) => {
    const { found, truth } = posed(pose);
    for (const [x, y] of POINTS) {
      const [at, is] = [found!.place({ x, y }), truth(x, y)];
      expect([at.x, at.y]).toEqual([is.x, is.y].map((value) => expect.closeTo(value, 6)));
      // From the middle of the target, which stands 4,250 mm from the lens.
      expect(Math.abs(at.depth - (is.z - 4250))).toBeLessThan(0.25);
    }
  });

  test('is as much deeper as the print came out larger', () => {
    const depth = (printed: number) => posed({}, printed as PrintFactor).found!.place({ x: 63.5, y: layout.zero - 50 }).depth;
    expect(depth(0.9) / depth(1)).toBeCloseTo(0.9, 9);
  });

  test('is in doubt by 0.15 degrees below the target’s middle, and by half a millimetre of paper', () => {
    // 120 and 3 below it, and the way to the zero line at 45 degrees.
    const below = 123 + layout.zero * Math.SQRT1_2;
    const about = Math.hypot(below * Math.sin((0.15 * Math.PI) / 180), 0.5);
    expect(Math.abs(posed({}).found!.doubt / about - 1)).toBeLessThan(0.03);
  });
});

describe('along an edge', () => {
  const plane = { width: 40, height: 64, light: Float32Array.from({ length: 40 * 64 }, (_, at) => normalBelow((at % 40) + 0.5 - 20)) };
  const edge = { from: { x: 20, y: 0 }, to: { x: 20, y: 64 }, depthFrom: 0, depthTo: 100, room: 20 };

  test('pieces of 16 pixels are read, their depths by one over the distance', () => {
    const read = readAlong(plane, edge, 900);
    expect(read).toHaveLength(4);
    const depth = (share: number): number => 1 / (1 / 900 + share * (1 / 1000 - 1 / 900)) - 900;
    expect(read.map((piece) => piece?.depth)).toEqual([1 / 8, 3 / 8, 5 / 8, 7 / 8].map((share) => expect.closeTo(depth(share), 9)));
    for (const piece of read) expect(piece).toMatchObject({ runs: 'upright', spread: expect.closeTo(1, 1) });
    expect(readAlong(plane, { ...edge, to: { x: 20, y: 23 } }, 900)).toHaveLength(1);
    expect(readAlong(plane, { ...edge, to: { x: 20, y: 25 } }, 900)).toHaveLength(2);
  });

  test('a level one is told as that, and a piece without an edge as none', () => {
    const level = { width: 64, height: 40, light: Float32Array.from({ length: 40 * 64 }, (_, at) => normalBelow(Math.floor(at / 64) + 0.5 - 20)) };
    expect(readAlong(level, { ...edge, from: { x: 0, y: 20 }, to: { x: 32, y: 20 } }, 900).map((piece) => piece?.runs)).toEqual(['level', 'level']);
    expect(readAlong({ ...plane, light: plane.light.map(() => 0.5) }, edge, 900)).toEqual([null, null, null, null]);
  });
});

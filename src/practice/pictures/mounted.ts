// The prints as they stand before the lens: the target flat, the ramp under it with its zero line in the target's plane and its
// upper end leaning away. A flat sheet in space is an origin and two axes; seen through a pinhole it becomes a 3 × 3 matrix from its
// drawn millimetres to pixels, whose third row gives the distance from the lens (R. Hartley, A. Zisserman, Multiple View Geometry,
// 2nd ed. 2004, ch. 8.1).
import type { Drawing } from '../../optics/print/drawing.ts';
import { imageDistance } from './thinLens.ts';
import type { Shot } from './shot.ts';

type Vector = readonly [number, number, number];

export interface Mounted {
  readonly drawing: Drawing;
  /** In the target's own frame: x right, y down, z away from the camera, from the target's middle. */
  readonly origin: Vector;
  readonly right: Vector;
  readonly down: Vector;
}

export const mountTarget = (drawing: Drawing): Mounted => ({
  drawing,
  origin: [-drawing.width / 2, -drawing.height / 2, 0],
  right: [1, 0, 0],
  down: [0, 1, 0],
});

/** The ramp under the target, `gap` millimetres below it as seen from the front; `zero` is the height of its zero line in its drawing. */
export function mountRamp(ramp: Drawing, zero: number, target: Drawing, lean = 45, gap = 3): Mounted {
  const turn = (lean * Math.PI) / 180;
  const zeroAt = target.height / 2 + gap + zero * Math.cos(turn);
  return {
    drawing: ramp,
    origin: [-ramp.width / 2, zeroAt - zero * Math.cos(turn), zero * Math.sin(turn)],
    right: [1, 0, 0],
    down: [0, Math.cos(turn), -Math.sin(turn)],
  };
}

/** Row by row; pixels have their centres at a half. */
export type Projection = readonly [number, number, number, number, number, number, number, number, number];

/** From the sheet's millimetres to pixels; its third row is the distance from the lens in millimetres. */
export function projectionOf({ origin, right, down }: Mounted, { pose, lens, sensor }: Shot): Projection {
  const scale = imageDistance(lens) / sensor.pitch;
  const [a, b, o] = [turned(right, pose), turned(down, pose), turned(origin, pose)];
  const at: Vector = [o[0] + pose.right, o[1] + pose.down, o[2] + lens.distance];
  const row = (axis: 0 | 1, middle: number) => [a, b, at].map((vector) => scale * vector[axis] + middle * vector[2]) as unknown as Vector;
  return [...row(0, sensor.width / 2), ...row(1, sensor.height / 2), a[2], b[2], at[2]];
}

export function project([a, b, c, d, e, f, g, h, i]: Projection, x: number, y: number): { x: number; y: number; z: number } {
  const z = g * x + h * y + i;
  return { x: (a * x + b * y + c) / z, y: (d * x + e * y + f) / z, z };
}

/** Swing about the upright axis, then lean about the level one, then roll about the line of sight. */
function turned([x, y, z]: Vector, { lean, swing, roll }: Shot['pose']): Vector {
  const [p, q, r] = [lean, swing, roll].map((angle) => (angle * Math.PI) / 180) as unknown as Vector;
  const [x1, z1] = [x * Math.cos(q) - z * Math.sin(q), x * Math.sin(q) + z * Math.cos(q)];
  const [y2, z2] = [y * Math.cos(p) + z1 * Math.sin(p), z1 * Math.cos(p) - y * Math.sin(p)];
  return [x1 * Math.cos(r) - y2 * Math.sin(r), x1 * Math.sin(r) + y2 * Math.cos(r), z2];
}

// The whole rig from above: camera and lens, the target with the tilt that it may have, and the light from both sides. Lamps
// at 45 degrees on either side are common practice, no source.
import type { Point } from '../print/drawing.ts';
import { BODY, PAPER, type RigSizes } from './rigSizes.ts';
import { lensFront, type RigScale } from './rigScale.ts';
import { patchOf, lineOf, type Stroke } from './scene.ts';

/** Of a body from above, in millimetres from the film plane and the axis: its grip is on the person's right. */
const OUTLINE: readonly (readonly [number, number])[] = [
  [-BODY.back, -BODY.half],
  [20, -BODY.half],
  [BODY.mount, -34],
  [BODY.mount, 38],
  [60, 44],
  [60, BODY.half],
  [-BODY.back, BODY.half],
];
/** How far the lamps stand from the target: a share of the distance, and a metre at most, in millimetres. */
const LAMP = { share: 1 / 6, most: 1000, least: 22 } as const;
/** Half the room a lamp takes, in units, and half the length of the line that shows a tilt. */
const GLOW = 10;
const TILTED = 17;

/** Sideways from the axis to either lamp, and as far from the target's plane. */
const lampOffset = ({ distance }: RigSizes, { along }: RigScale): number =>
  Math.max(LAMP.least, Math.min(LAMP.most, distance * LAMP.share) * Math.SQRT1_2 * along);

/** How far it reaches to either side of the axis. */
export function aboveReach(rig: RigSizes, scale: RigScale): number {
  const half = ((rig.target?.width ?? PAPER.width) / 2) * scale.target;
  return Math.max(BODY.half * scale.camera, (rig.lens.across / 2) * scale.camera, half, TILTED, lampOffset(rig, scale) + GLOW) + 1;
}

/** `axis`: the height of the lens on the sketch. */
export function fromAbove(rig: RigSizes, scale: RigScale, axis: number): readonly Stroke[] {
  const { camera, target: atTarget, film, plane } = scale;
  const { lens, target, lighting } = rig;
  const front = lensFront(rig, scale);
  const at = (x: number, y: number): Point => ({ x, y });
  const rim = (lens.across / 2) * camera;
  const half = ((target?.width ?? PAPER.width) / 2) * atTarget;
  const offset = lampOffset(rig, scale);
  const tilt = target?.allowedTilt ?? null;
  return [
    ...(tilt === null ? [] : [tilted(plane, axis, tilt), tilted(plane, axis, -tilt)]),
    lineOf('axis', at(front, axis), at(plane, axis)),
    patchOf('camera', ...OUTLINE.map(([x, y]) => at(film + x * camera, axis + y * camera))),
    patchOf('lens', at(film + BODY.mount * camera, axis - rim), at(front, axis - rim), at(front, axis + rim), at(film + BODY.mount * camera, axis + rim)),
    ...[-1, 1].flatMap((side) => lamp(at(plane - offset, axis + side * offset), at(plane, axis), lighting === 'daylight')),
    lineOf('print', at(plane, axis - half), at(plane, axis + half)),
  ];
}

function tilted(plane: number, axis: number, tilt: number): Stroke {
  const turn = (tilt * Math.PI) / 180;
  const [x, y] = [TILTED * Math.sin(turn), TILTED * Math.cos(turn)];
  return lineOf('allowed', { x: plane - x, y: axis - y }, { x: plane + x, y: axis + y });
}

/** A shade that opens towards the target, or a sun, and the way of its light. */
function lamp(from: Point, to: Point, daylight: boolean): readonly Stroke[] {
  const far = Math.hypot(to.x - from.x, to.y - from.y);
  const [x, y] = [(to.x - from.x) / far, (to.y - from.y) / far];
  /** So far towards the target, and so far beside that way. */
  const off = (towards: number, beside: number): Point => ({ x: from.x + towards * x - beside * y, y: from.y + towards * y + beside * x });
  const ray = lineOf('ray', off(GLOW, 0), off(far - 3, 0));
  if (!daylight) return [ray, patchOf('lamp', off(-5, 2), off(4, 6), off(4, -6), off(-5, -2))];
  const spikes = [45, 90, 135, 180, 225, 270, 315].map((angle) => {
    const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    return lineOf('lamp', off(6 * c, 6 * s), off(9 * c, 9 * s));
  });
  return [ray, { part: 'lamp', is: 'disc', middle: from, radius: 4 }, ...spikes];
}

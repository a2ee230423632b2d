// The whole rig from the side: camera and lens, the distance below them, the target, and the ramp leaning away below it.
import type { Point } from '../print/drawing.ts';
import { BODY, leaning, PAPER, type RigSizes } from './rigSizes.ts';
import { lensFront, type RigScale } from './rigScale.ts';
import { patchOf, lineOf, type Stroke } from './scene.ts';

/** Of a body from the side, in millimetres from the film plane and the axis. */
const OUTLINE: readonly (readonly [number, number])[] = [
  [-BODY.back, BODY.base],
  [-BODY.back, -38],
  [-14, -BODY.top],
  [24, -BODY.top],
  [BODY.mount, -38],
  [BODY.mount, BODY.base],
];
/** White between the target and its ramp, and between all of it and the line of the distance. */
const GAP = 2;
const BELOW = 9;
const TICK = 4;

/** How far it reaches above and below the axis, the line of the distance counted in. */
export function sideReach(rig: RigSizes, { camera, target: atTarget }: RigScale): { readonly up: number; readonly down: number } {
  const { lens, target } = rig;
  const half = ((target?.height ?? PAPER.height) / 2) * atTarget;
  const ramp = target === null ? 0 : GAP + leaning(target).down * atTarget;
  const rim = (lens.across / 2) * camera;
  return { up: Math.max(BODY.top * camera, rim, half) + 1, down: Math.max(BODY.base * camera, rim, half + ramp) + BELOW + TICK };
}

/** `axis`: the height of the lens on the sketch. */
export function fromTheSide(rig: RigSizes, scale: RigScale, axis: number): readonly Stroke[] {
  const { camera, target: atTarget, film, plane } = scale;
  const front = lensFront(rig, scale);
  const at = (x: number, y: number): Point => ({ x, y });
  const rim = (rig.lens.across / 2) * camera;
  const half = ((rig.target?.height ?? PAPER.height) / 2) * atTarget;
  const foot = axis + sideReach(rig, scale).down - TICK;
  return [
    lineOf('axis', at(front, axis), at(plane, axis)),
    patchOf('camera', ...OUTLINE.map(([x, y]) => at(film + x * camera, axis + y * camera))),
    patchOf('lens', at(film + BODY.mount * camera, axis - rim), at(front, axis - rim), at(front, axis + rim), at(film + BODY.mount * camera, axis + rim)),
    lineOf('print', at(plane, axis - half), at(plane, axis + half)),
    ...(rig.target === null ? [] : [rampLine(rig.target, plane, axis + half + GAP, atTarget)]),
    lineOf('measure', at(film, foot), at(plane, foot)),
    lineOf('measure', at(film, foot - TICK), at(film, foot + TICK)),
    lineOf('measure', at(plane, foot - TICK), at(plane, foot + TICK)),
  ];
}

/** The face of a ramp whose upper end hangs at this height, its zero line in the target's plane. */
export function rampLine(target: Parameters<typeof leaning>[0], plane: number, top: number, units: number): Stroke {
  const { down, behind, before } = leaning(target);
  return lineOf('ramp', { x: plane + behind * units, y: top }, { x: plane - before * units, y: top + down * units });
}

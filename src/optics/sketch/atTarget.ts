// The end of the rig where the focus falls, larger: the print as the camera sees it, and beside it, at the same scale, how
// deep the focus is there, with the ramp leaning through it.
import { leaning, type AtTarget } from './rigSizes.ts';
import { rampLine } from './fromTheSide.ts';
import { plateOf, lineOf, type Bounds, type Stroke } from './scene.ts';

const TALLEST = 92;
const GAP = 3;
/** A depth of field that is thinner than this is seen all the same. */
const THINNEST = 0.75;

/** Units a millimetre, where each of the two pictures may be so wide. */
export function targetUnits(target: AtTarget, width: number): number {
  const { down, behind, before } = leaning(target);
  return Math.min(
    (TALLEST - GAP) / (target.height + down),
    width / Math.max(target.width, target.ramp.width),
    width / 2 / Math.max(behind, before, target.height / 2),
  );
}

/** Height of either picture. */
export const targetHeight = (target: AtTarget, units: number): number => (target.height + leaning(target).down) * units + GAP;

/** The print from the camera, in the middle of a box, with the ramp below it. */
export function printInFront(target: AtTarget, units: number, { x, y, width }: Bounds): readonly Stroke[] {
  const middle = x + width / 2;
  const [across, high, field] = [target.width * units, target.height * units, target.field * units];
  const centre = y + high / 2;
  const [half, down, foot] = [(target.ramp.width * units) / 2, leaning(target).down * units, y + high + GAP];
  const arm = Math.max(3, field / 8);
  return [
    plateOf('print', middle - across / 2, y, across, high),
    plateOf('field', middle - field / 2, centre - field / 2, field, field),
    lineOf('measure', { x: middle - arm, y: centre }, { x: middle + arm, y: centre }),
    lineOf('measure', { x: middle, y: centre - arm }, { x: middle, y: centre + arm }),
    plateOf('ramp', middle - half, foot, 2 * half, down),
    // As it looks, not line by line.
    ...[1, 2, 3, 4, 5].map((line) => rung(middle - half / (line === 3 ? 1 : 2), foot + (down * line) / 6, half * (line === 3 ? 2 : 1))),
  ];
}

const rung = (x: number, y: number, width: number): Stroke => lineOf('measure', { x, y }, { x: x + width, y });

/** From the side: what is sharp before and behind the target. Depth that runs out of the box is cut off there. */
export function depthAround(target: AtTarget, units: number, { x, y, width, height }: Bounds): readonly Stroke[] {
  const plane = x + width / 2;
  const high = target.height * units;
  const { front, behind } = target.depth;
  const near = Math.max(x, plane - Math.max(THINNEST, front * units));
  const far = behind === 'infinite' ? x + width : Math.min(x + width, plane + Math.max(THINNEST, behind * units));
  return [
    plateOf('depth', near, y, far - near, height),
    lineOf('axis', { x, y: y + high / 2 }, { x: plane, y: y + high / 2 }),
    lineOf('print', { x: plane, y }, { x: plane, y: y + high }),
    rampLine(target, plane, y + high + GAP, units),
  ];
}

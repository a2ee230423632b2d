// How many units a millimetre has. The distance is drawn true in both views of the whole rig; camera, lens and target are, too,
// unless they would be too small to be seen: then each end is drawn larger, in proportion within itself.
import { BODY, leaning, PAPER, type AtTarget, type RigSizes } from './rigSizes.ts';

export interface RigScale {
  /** Units a millimetre along the distance, at the camera and at the target. */
  readonly along: number;
  readonly camera: number;
  readonly target: number;
  /** Where the film plane and the target stand. */
  readonly film: number;
  readonly plane: number;
}

/** Units beside the film plane and the target. */
const LEFT = 10;
const RIGHT = 34;
/** Nothing is drawn larger than this, or a close-up would fill the panel. */
const MOST = 0.3;
/** Tallest that a target with its ramp is drawn. */
const TALLEST = 84;
/** Least that is seen: the body from the back to the mount, and the target from top to bottom. */
const LEAST_BODY = 15;
const LEAST_TARGET = 30;
/** Most of the distance that the front of the lens may hide: where its end is drawn larger, and where it truly stands so near. */
const HIDDEN = { larger: 0.3, close: 0.7 } as const;

/** The target's own height with the ramp, in millimetres. */
const hanging = (target: AtTarget | null): number => (target === null ? PAPER.height : target.height + leaning(target).down);

export function rigScale({ distance, lens, target }: RigSizes, width: number): RigScale {
  const along = Math.min((width - LEFT - RIGHT) / distance, MOST, TALLEST / hanging(target));
  const film = (width - LEFT - RIGHT - distance * along) / 2 + LEFT;
  return {
    along,
    camera: Math.max(along, Math.min(LEAST_BODY / (BODY.back + BODY.mount), (HIDDEN.larger * distance * along) / lens.reach)),
    target: Math.max(along, LEAST_TARGET / hanging(target)),
    film,
    plane: film + distance * along,
  };
}

/** The front of the lens: never so far out that it would hide the distance. */
export const lensFront = ({ lens }: RigSizes, { camera, film, plane }: RigScale): number => film + Math.min(lens.reach * camera, HIDDEN.close * (plane - film));

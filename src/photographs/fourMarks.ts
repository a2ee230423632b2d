// An arrangement of quadrangles taken for the four marks of a print: their corners made sharp, their dots read, and so which way
// is up. What is no print seldom gets here, and then fails by its dots: two fixed ones and a check over the rest.
import { readDots, type PrintKind } from '../optics/print/dots.ts';
import { HALF_SIDE } from '../optics/print/marks.ts';
import type { Arrangement } from './arrangement.ts';
import { turnedQuad } from './frame.ts';
import { dotLights, tellDots } from './markDots.ts';
import { boxOf, type PixelSource } from './pixelSource.ts';
import type { Plane } from './plane.ts';
import { distanceBetween, sidesOfQuad, type Quad } from './quad.ts';
import { sharpQuad } from './sharpQuad.ts';

/** Row by row on the print, each with its upper left corner first; null where a mark is not seen. */
export type FourQuads = readonly (Quad | null)[];

export type FourMarks =
  | { readonly are: 'read'; readonly number: number; readonly quads: FourQuads }
  /** One is missing; the dots of the others fit one way up. */
  | { readonly are: 'three'; readonly quads: FourQuads }
  /** Solid squares in the right places, as on prints without dots. */
  | { readonly are: 'solid' }
  | { readonly are: 'unread'; readonly side: number }
  | { readonly are: 'no marks' };

/** A side is followed so far: a mark is black, and its ground white, for a little more. In its units: 1.25. */
const REACH = 1.25 / (2 * HALF_SIDE);

export function readMarks(kind: PrintKind, picture: PixelSource, { quads }: Arrangement): FourMarks {
  const planeAt = (quad: Quad): Plane => picture.around(boxOf(quad, distanceBetween(quad[0], quad[2]) / 2));
  const seen = quads.map((quad) => quad && sharpQuad(planeAt(quad), quad, REACH));
  const missing = quads.filter((quad) => quad === null).length;
  if (seen.filter((quad) => quad === null).length > missing) return { are: 'no marks' };
  const lights = seen.map((quad) => quad && dotLights(planeAt(quad), quad));
  const known = lights.flatMap((four) => four ?? []);
  if (known.length < 16 - 4 * missing) return { are: 'no marks' };
  const side = Math.min(...seen.flatMap((quad) => (quad ? sidesOfQuad(quad) : [])));
  const told = tellDots(known);
  if (told.are === 'none') return missing === 0 ? { are: 'solid' } : { are: 'no marks' };
  if (told.are === 'unsure') return missing === 0 ? { are: 'unread', side } : { are: 'no marks' };
  if (missing > 0) return threeOf(seen, told.dots);
  const upright = readDots(kind, told.dots);
  if (upright !== null) return { are: 'read', number: upright, quads: seen };
  const turned = readDots(kind, told.dots.toReversed());
  if (turned !== null) return { are: 'read', number: turned, quads: halfTurned(seen) };
  return { are: 'unread', side };
}

const halfTurned = (quads: FourQuads): FourQuads => quads.toReversed().map((quad) => quad && turnedQuad(quad, 2));

/** Which way up, by the two fixed dots, of which one at least is seen: the upper left mark's first and the lower right one's last. */
function threeOf(quads: FourQuads, dots: readonly boolean[]): FourMarks {
  const first = quads[0] ? dots[0] : null;
  const last = quads[3] ? dots.at(-1) : null;
  if (first !== false && last !== true) return { are: 'three', quads };
  if (last !== false && first !== true) return { are: 'three', quads: halfTurned(quads) };
  return { are: 'no marks' };
}

// Reads the dots of a mark whose corners are known: how light it is where each dot may be, between its own black and the white
// around it. Under blur a dot's light sinks and its neighbours' rises, so what is white and what is not is told over all dots
// of a print together.
import type { Point } from '../optics/print/drawing.ts';
import { DOT_PLACES, HALF_SIDE } from '../optics/print/marks.ts';
import { homographyFrom, through } from './homography.ts';
import type { Plane } from './plane.ts';
import type { Quad } from './quad.ts';
import { lightAt } from './sharpQuad.ts';

/** Over so much of a dot's width light is averaged, in the mark's units. */
const SPOT = [-0.5, -0.25, 0, 0.25, 0.5];
/** Where the mark is black and its ground white, whatever the dots, from its middle along its sides. */
const BLACKS: readonly Point[] = [-1, 1].flatMap((x) => [-1, 1].map((y) => ({ x: x * 3.1, y: y * 3.1 })));
const OUTSIDE = HALF_SIDE + 0.8;
const WHITES: readonly Point[] = [-2, 0, 2].flatMap((t) => [
  { x: t, y: OUTSIDE },
  { x: t, y: -OUTSIDE },
  { x: OUTSIDE, y: t },
  { x: -OUTSIDE, y: t },
]);
/** No white dot is darker than this share of the way from black to white, however blurred, if it is to be read. */
const LEAST_WHITE = 0.3;
/** Dots nearer to the middle between the lightest and the darkest are not sure. */
const SURE = 0.12;

/** Share of the way from black to white of each of the four dots; null where the mark shows no black or white. */
export function dotLights(plane: Plane, corners: Quad): number[] | null {
  const places: readonly Point[] = [
    { x: -HALF_SIDE, y: -HALF_SIDE },
    { x: HALF_SIDE, y: -HALF_SIDE },
    { x: HALF_SIDE, y: HALF_SIDE },
    { x: -HALF_SIDE, y: HALF_SIDE },
  ];
  const toPicture = homographyFrom(places.map((from, index) => ({ from, to: corners[index] ?? corners[0] })));
  if (toPicture === null) return null;
  const mean = (points: readonly Point[]): number => points.reduce((sum, point) => sum + lightAt(plane, through(toPicture, point)), 0) / points.length;
  const [black, white] = [mean(BLACKS), mean(WHITES)];
  if (!(white - black > 0.02)) return null;
  return DOT_PLACES.map((place) => (mean(SPOT.flatMap((x) => SPOT.map((y) => ({ x: place.x + x, y: place.y + y })))) - black) / (white - black));
}

export type DotsSeen = { readonly are: 'read'; readonly dots: readonly boolean[] } | { readonly are: 'none' } | { readonly are: 'unsure' };

/** White or not, over all dots of a print. */
export function tellDots(lights: readonly number[]): DotsSeen {
  const [darkest, lightest] = [Math.min(...lights), Math.max(...lights)];
  if (lightest < LEAST_WHITE) return { are: lightest < 0.12 ? 'none' : 'unsure' };
  const middle = (darkest + lightest) / 2;
  if (lights.some((light) => Math.abs(light - middle) < SURE * (lightest - darkest))) return { are: 'unsure' };
  return { are: 'read', dots: lights.map((light) => light > middle) };
}

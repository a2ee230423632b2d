// A dark square's corners to a tenth of a pixel: along each side, across which the light goes from black to white, the place of
// the step is where the dark share of the way across ends. That share is a sum, so blur that is the same to both sides does not
// move it, and noise averages out; the sides are then lines fitted to these places, and the corners where they meet.
import type { Point } from '../optics/print/drawing.ts';
import type { Plane } from './plane.ts';
import { areaOf, distanceBetween, type Quad } from './quad.ts';

interface Line {
  readonly through: Point;
  /** Of length one. */
  readonly along: Point;
}

/** How far light is followed to either side of a side, as a share of the way to the side opposite: no farther than the square is black and its ground white. */
const FIRST_REACH = 0.17;
const PASSES = 3;
/** Share of a side's ends that is left out: the other sides' blur comes in. */
const END = 0.14;
const MOST_PLACES = 64;
/** White over black at least this far apart, in linear light. */
const LEAST_CONTRAST = 0.02;

/** From corners that are about right, in pixels; `reach` is the last pass's share. Null where no such square is there. */
export function sharpQuad(plane: Plane, about: Quad, reach: number): Quad | null {
  let quad = about;
  for (let pass = 0; pass < PASSES; pass++) {
    const share = pass === 0 ? Math.max(FIRST_REACH, reach) : reach;
    const area = Math.abs(areaOf(quad));
    const sides = quad.map((from, index) => {
      const to = quad[(index + 1) % 4] ?? from;
      // A leaning print's marks are less high than wide: black reaches as far as the side opposite.
      return sideLine(plane, from, to, (share * area) / distanceBetween(from, to));
    });
    const [top, right, bottom, left] = sides;
    if (!top || !right || !bottom || !left) return null;
    const corners = [meet(left, top), meet(top, right), meet(right, bottom), meet(bottom, left)];
    const [a, b, c, d] = corners;
    if (!a || !b || !c || !d) return null;
    const moved = corners.map((corner, index) => (corner ? distanceBetween(corner, quad[index] ?? corner) : 0));
    if (Math.max(...moved) > 0.3 * distanceBetween(quad[0], quad[2])) return null;
    quad = [a, b, c, d];
  }
  return quad;
}

/** The light between pixels, by the four nearest. */
export const lightAt = (plane: Plane, { x, y }: Point): number => lightAtPlace(plane, x, y);

export function lightAtPlace({ width, height, light }: Plane, x: number, y: number): number {
  const left = Math.max(0, Math.min(width - 2, Math.floor(x - 0.5)));
  const top = Math.max(0, Math.min(height - 2, Math.floor(y - 0.5)));
  const [right, down] = [Math.max(0, Math.min(1, x - 0.5 - left)), Math.max(0, Math.min(1, y - 0.5 - top))];
  const at = top * width + left;
  const upper = light[at]! * (1 - right) + light[at + 1]! * right;
  const lower = light[at + width]! * (1 - right) + light[at + width + 1]! * right;
  return upper * (1 - down) + lower * down;
}

/** `half`: how far light is followed to either side, in pixels. */
function sideLine(plane: Plane, from: Point, to: Point, half: number): Line | null {
  const long = distanceBetween(from, to);
  const along = { x: (to.x - from.x) / long, y: (to.y - from.y) / long };
  // Outwards, with corners clockwise and y downwards.
  const out = { x: along.y, y: -along.x };
  const places = Math.round(Math.max(8, Math.min(MOST_PLACES, long)));
  const steps = Math.max(6, Math.min(40, Math.round(4 * half)));
  const on = (place: number): Point => {
    const t = END + ((1 - 2 * END) * (place + 0.5)) / places;
    return { x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) };
  };
  const profiles = Array.from({ length: places }, (_, place) => {
    const at = on(place);
    return Float64Array.from({ length: steps }, (__, step) => {
      const off = half * ((2 * (step + 0.5)) / steps - 1);
      return lightAt(plane, { x: at.x + off * out.x, y: at.y + off * out.y });
    });
  });
  const end = Math.max(1, Math.round(steps / 8));
  const mean = (first: number): number => {
    let sum = 0;
    for (const profile of profiles) for (let step = first; step < first + end; step++) sum += profile[step]!;
    return sum / (places * end);
  };
  const [black, white] = [mean(0), mean(steps - end)];
  if (white - black < Math.max(LEAST_CONTRAST, 0.15 * white)) return null;
  const found = profiles.map((profile, place) => {
    const dark = profile.reduce((sum, light) => sum + (white - light), 0) / ((white - black) * steps);
    const off = half * (2 * dark - 1);
    const at = on(place);
    return { x: at.x + off * out.x, y: at.y + off * out.y };
  });
  return lineThrough(found, along);
}

/** By least squares, then once more without the places that lie farther off than most. */
function lineThrough(points: readonly Point[], about: Point): Line {
  const first = fitLine(points, about);
  const offs = points.map((point) => Math.abs(offLine(first, point)));
  const usual = offs.toSorted((a, b) => a - b)[Math.floor(offs.length / 2)] ?? 0;
  const kept = points.filter((_, index) => (offs[index] ?? 0) <= 3 * usual + 0.05);
  return kept.length >= 4 ? fitLine(kept, about) : first;
}

function fitLine(points: readonly Point[], about: Point): Line {
  const x = points.reduce((sum, point) => sum + point.x, 0) / points.length;
  const y = points.reduce((sum, point) => sum + point.y, 0) / points.length;
  // Off the mean line, over the way along it: a small turn of what it was taken for.
  let [square, product] = [0, 0];
  for (const point of points) {
    const t = (point.x - x) * about.x + (point.y - y) * about.y;
    square += t * t;
    product += t * ((point.y - y) * about.x - (point.x - x) * about.y);
  }
  const slope = square > 0 ? product / square : 0;
  const long = Math.hypot(1, slope);
  return { through: { x, y }, along: { x: (about.x - slope * about.y) / long, y: (about.y + slope * about.x) / long } };
}

const offLine = ({ through, along }: Line, point: Point): number => (point.y - through.y) * along.x - (point.x - through.x) * along.y;

function meet(one: Line, other: Line): Point | null {
  const whole = one.along.x * other.along.y - one.along.y * other.along.x;
  if (Math.abs(whole) < 0.2) return null;
  const [x, y] = [other.through.x - one.through.x, other.through.y - one.through.y];
  const t = (x * other.along.y - y * other.along.x) / whole;
  return { x: one.through.x + t * one.along.x, y: one.through.y + t * one.along.y };
}

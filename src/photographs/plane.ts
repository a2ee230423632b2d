// The picture as the measurements read it: one grey plane of linear light. A photograph's pixels are coded by the
// transfer curve of sRGB, and that is an assumption: a camera's own tone curve lies on top of it, and leaves shadows and
// highlights a little off. Curve: IEC 61966-2-1:1999, 5.2; the weights of the three colours: ITU-R BT.709-6, 3.2.

/** Linear light, 0 black to 1 clipping, row by row. */
export interface Plane {
  readonly width: number;
  readonly height: number;
  readonly light: Float32Array;
}

const RED = 0.2126;
const GREEN = 0.7152;
const BLUE = 0.0722;

/** From 0 to 1 as coded to 0 to 1 of light. */
const decoded = (coded: number): number => (coded <= 0.04045 ? coded / 12.92 : ((coded + 0.055) / 1.055) ** 2.4);

/** What each of the 256 codes of a colour adds to the light. */
const shareOf = (weight: number): Float32Array => Float32Array.from({ length: 256 }, (_, code) => weight * decoded(code / 255));
const REDS = shareOf(RED);
const GREENS = shareOf(GREEN);
const BLUES = shareOf(BLUE);

/** Of pixels as a canvas gives them, row by row: four bytes each, width × height of them. What is transparent counts as it is coded. */
export function planeOf(rgba: Uint8ClampedArray, width: number, height: number): Plane {
  const plane = { width, height, light: new Float32Array(width * height) };
  writeLight(plane, { left: 0, top: 0, width, height }, rgba);
  return plane;
}

/** The same into a part of a plane, which lies in it as a whole. */
export function writeLight(
  plane: Plane,
  { left, top, width, height }: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
  rgba: Uint8ClampedArray,
): void {
  const { light } = plane;
  for (let y = 0, at = 0; y < height; y++) {
    const end = (top + y) * plane.width + left + width;
    for (let pixel = end - width; pixel < end; pixel++, at += 4) light[pixel] = REDS[rgba[at]!]! + GREENS[rgba[at + 1]!]! + BLUES[rgba[at + 2]!]!;
  }
}

/**
 * So many pixels of the plane, from this one on; all four are whole numbers, and the picture has at least one pixel. What lies
 * beyond its border repeats the nearest pixel, so that a place in the cut is always the place in the picture less (left, top).
 */
export function cutPlane(plane: Plane, left: number, top: number, width: number, height: number): Plane {
  const light = new Float32Array(width * height);
  const within = (at: number, size: number): number => Math.max(0, Math.min(size - 1, at));
  for (let y = 0; y < height; y++) {
    const row = within(top + y, plane.height) * plane.width;
    for (let x = 0; x < width; x++) light[y * width + x] = plane.light[row + within(left + x, plane.width)]!;
  }
  return { width, height, light };
}

// How a stored picture is turned so that it stands as it was seen (CIPA DC-008, Orientation: which side of the picture the
// first row and the first column are). Browsers do it for a JPEG that says so itself; the one inside a raw file leaves it to
// the raw file.
import type { PictureSize } from './jpeg.ts';

/** An affine mapping of stored pixels to seen ones: x' = a·x + c·y + e, y' = b·x + d·y + f; and the frame as it is seen. */
export interface PictureTurn {
  readonly matrix: readonly [a: number, b: number, c: number, d: number, e: number, f: number];
  readonly frame: PictureSize;
}

/** `orientation` from 1 to 8; any other counts as 1. `frame` as it is stored. */
export function turnOf(orientation: number, frame: PictureSize): PictureTurn {
  const { width: w, height: h } = frame;
  const turned = { width: h, height: w };
  switch (orientation) {
    case 2:
      return { matrix: [-1, 0, 0, 1, w, 0], frame };
    case 3:
      return { matrix: [-1, 0, 0, -1, w, h], frame };
    case 4:
      return { matrix: [1, 0, 0, -1, 0, h], frame };
    case 5:
      return { matrix: [0, 1, 1, 0, 0, 0], frame: turned };
    case 6:
      return { matrix: [0, 1, -1, 0, h, 0], frame: turned };
    case 7:
      return { matrix: [0, -1, -1, 0, h, w], frame: turned };
    case 8:
      return { matrix: [0, -1, 1, 0, 0, w], frame: turned };
    default:
      return { matrix: [1, 0, 0, 1, 0, 0], frame };
  }
}

// The tests' own camera: a picture as the practice camera takes it, kept as a JPEG.
import { takePicture, type TakenPicture } from '../../../src/practice/pictures/takenPicture.ts';
import type { Mounted } from '../../../src/practice/pictures/mounted.ts';
import type { Shot } from '../../../src/practice/pictures/shot.ts';
import { jpegLoss } from './jpegLoss.ts';

export interface KeptShot extends Shot {
  /** `jpeg`: quality of the file, 1 to 100; null keeps every level. */
  readonly development: Shot['development'] & { readonly jpeg: number | null };
}

export function photograph(sheets: readonly Mounted[], shot: KeptShot, seed: number): TakenPicture {
  const taken = takePicture(sheets, shot, seed);
  const { jpeg } = shot.development;
  return jpeg === null ? taken : { ...taken, rgba: jpegLoss(taken.rgba, taken.width, taken.height, jpeg) };
}

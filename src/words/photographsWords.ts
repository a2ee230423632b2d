// Photographs of the printed target: bringing them in, and what each of them shows.
import type { Photograph } from '../kit/photograph/photograph.ts';
import type { PictureSize } from '../kit/photograph/jpeg.ts';
import type { PictureFault, PictureStage } from '../photographs/brought.ts';

export interface PhotographsWords {
  readonly title: string;
  readonly about: string;
  readonly choose: string;
  readonly drop: string;
  readonly stays: string;
  /** The list of pictures. */
  readonly pictures: string;
  readonly progress: (read: number, all: number) => string;
  readonly stage: Readonly<Record<PictureStage | 'waiting' | 'let go', string>>;
  readonly stop: string;
  readonly clear: string;
  readonly fault: Readonly<Record<PictureFault, string>>;
  /** What the camera wrote into the picture, and its size. */
  readonly camera: (frame: PictureSize, camera: Photograph | null) => string;
}

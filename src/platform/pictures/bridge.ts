// What the panel and the worker that reads pictures say to each other. Pictures go in as files; only figures and small
// pictures come out.
import type { Kit } from '../../kit/kit.ts';
import type { PictureSize } from '../../kit/photograph/jpeg.ts';
import type { Photograph } from '../../kit/photograph/photograph.ts';
import type { PictureFault, PictureStage } from '../../photographs/brought.ts';
import type { CameraFacts, PictureFacts } from '../../photographs/cameraFacts.ts';
import type { PictureReading } from '../../photographs/reading.ts';
import type { Result } from '../../result.ts';

/** To the worker: one picture at a time. `east`: minutes ahead of UTC, for a camera that does not say. */
export interface ToWorker {
  readonly file: File;
  readonly east: number;
  readonly kit: Kit;
  /** The id of the situation it is of, where that is known. */
  readonly situation: string | null;
  /** Printed length over drawn length, of the prints it shows. */
  readonly printed: PictureFacts['printed'];
  /** What is known of the practice camera, whose files say nothing of it; null for pictures of a real one. */
  readonly practice: CameraFacts | null;
}

/** From the worker: how far it is, and in the end what came out. */
export type FromWorker =
  { readonly tells: 'stage'; readonly stage: PictureStage } | { readonly tells: 'end'; readonly picture: Result<BroughtPicture, PictureFault> };

export interface BroughtPicture {
  /** As it stands upright, in pixels. */
  readonly frame: PictureSize;
  /** What the camera wrote; null where it wrote nothing that can be read. */
  readonly camera: Photograph | null;
  /** The whole picture, reduced. */
  readonly small: Blob;
  readonly reading: PictureReading;
  /** At 100 %: one for each edge of the reading, in its order. */
  readonly crops: readonly Blob[];
  /** At 100 %: one for each edge that is compared between pictures. */
  readonly compared: readonly Blob[];
}

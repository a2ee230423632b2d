// What the panel and the worker of the practice camera say to each other: which pictures are wanted, and each as it is taken.
import type { PracticeTurn } from '../../practice/pictures/picturedCamera.ts';
import type { Scale } from '../../sweep/scale.ts';

export interface PracticeWanted {
  /** Of the practice camera, and the scale of its body. */
  readonly seed: number;
  readonly scale: Scale;
  readonly turn: PracticeTurn;
  /** Of this picture. */
  readonly number: number;
}

export interface PracticeTaken {
  readonly number: number;
  readonly jpeg: Blob;
}

// Saying that a value stands in the camera now.
import type { Scale } from '../sweep/scale.ts';
import type { Steps } from '../units.ts';

export interface EnteredWords {
  readonly title: string;
  readonly value: string;
  readonly offTheScale: (scale: Scale) => string;
  readonly mark: string;
  readonly marked: (value: Steps) => string;
}

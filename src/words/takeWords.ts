// What is said of a word that is being taught: whether a take of it is good enough, and how well the person stands out from
// the room.
import type { Clearness } from '../voice/ownWords/noiseMeter.ts';
import type { TakeFault } from '../voice/ownWords/takeQuality.ts';

export interface TakeWords {
  readonly good: string;
  /** What was wrong, and what to do. */
  readonly fault: (word: string, fault: TakeFault) => string;
  readonly heard: Readonly<Record<Clearness, string>>;
}

// Whom an ear tells what it hears, and how it is with it.
import type { Vocabulary } from '../../hearing/languages/heardLanguage.ts';
import type { Guess } from '../../voice/matching.ts';
import type { Deaf, Missed } from '../../voice/deaf.ts';

/** `waiting`: not listening just now, it tries again by itself. */
export type EarState =
  | 'off'
  | 'unavailable'
  | 'needs permission'
  /** The browser asks the person whether it may. */
  | 'asking'
  | 'starting'
  | 'listening'
  | 'deaf while speaking'
  | 'opens when pressed'
  | 'waiting';

export interface EarOwner {
  readonly language: Vocabulary;
  /** What makes sense now, word by word. */
  wordsNow(): readonly string[];
  /** Names of lenses that a question may be about now. */
  namesNow(): readonly string[];
  onState(state: EarState): void;
  /** Aborts when what a word would be about is over: the hold that was judged, the step that was taken. */
  passes(): AbortSignal;
  /**
   * True when it was meant for the panel: the rest of the utterance is dropped. `ago`: milliseconds since its sound began; what
   * began before the last step is about that step, and is not taken for this one.
   */
  onHeard(candidates: readonly Guess[], final: boolean, ago?: number): boolean;
  /** A word that counts now was heard, and not taken because of what was around it. */
  onMissed(word: string, why: Missed): void;
  /** Null: nothing stands in the way of hearing any more. */
  onDeaf(why: Deaf | null): void;
}

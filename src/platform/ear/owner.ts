// Whom an ear tells what it hears, and how it is with it.
import type { Candidate } from '../../voice/matching.ts';
import type { HearingPage } from '../tabs.ts';

/** `waiting`: not listening just now, it tries again by itself. */
export type EarState =
  | 'off'
  | 'unavailable'
  | 'needs permission'
  | 'starting'
  | 'listening'
  | 'deaf while speaking'
  | 'opens when pressed'
  | 'waiting';

/** What the person can do about a deaf ear: what the sentence says, or what that page is for. */
interface EarTrouble {
  readonly sentence: string;
  readonly page: HearingPage | null;
}

export interface EarOwner {
  readonly language: string;
  /** What makes sense now, word by word. */
  wordsNow(): readonly string[];
  onState(state: EarState): void;
  /** True when it was meant for the panel: the rest of the utterance is dropped. */
  onHeard(candidates: readonly Candidate[], final: boolean): boolean;
  onTrouble(trouble: EarTrouble | null): void;
}

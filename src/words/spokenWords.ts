// Whatever a sweep says. What is spoken is as short as it can be, because it is heard dozens of times and the next hold waits
// for it; what is written says the same in whole sentences, with the reason. Read with the session's desk, so that it is
// there before anything can be said.
import type { Prompt } from '../sweep/effect.ts';
import type { Outcome } from '../sweep/end/outcome.ts';
import type { Word } from '../sweep/inputs.ts';
import type { Suggestion } from '../sweep/next/suggestion.ts';
import type { Steps } from '../units.ts';
import type { BriefPrompt } from '../voice/brief.ts';
import type { Taken } from '../voice/matching.ts';
import type { InWords } from './inWords.ts';

export interface SpokenWords {
  readonly prompt: (prompt: Prompt) => InWords;
  /** A correction by itself, as it is said. */
  readonly correction: (value: Steps) => string;
  /** The same for the ear of a person who has heard it many times: only what is new. */
  readonly brief: (prompt: BriefPrompt) => string;
  /** Why this value: the part of a sentence that follows it. */
  readonly reason: (next: Suggestion) => string;
  readonly outcome: (outcome: Outcome) => InWords;
  /** The words that make sense now, for a person who asks. */
  readonly help: (words: readonly Word[]) => InWords;
  readonly askBack: {
    /** What was heard, but not clearly enough; a value so that no number is taken for another. */
    readonly question: (heard: Taken) => InWords;
    /** A question was answered with no. */
    readonly notTaken: InWords;
    /** Something was said that could not be told apart. */
    readonly sayAgain: InWords;
  };
  /** The value to enter is marked as entered in the camera. */
  readonly mark: {
    readonly made: (value: Steps) => InWords;
    readonly madeBefore: (value: Steps) => InWords;
    readonly takenBack: (value: Steps) => InWords;
  };
}

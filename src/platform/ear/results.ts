// What a recogniser has so far, as guesses. It hands over its results in pieces: together they are what was said, and each one
// that is final may also be all that was meant for the panel.
import type { Guess } from '../../voice/matching.ts';

interface Alternative {
  readonly transcript: string;
  /** From 0 to 1; many recognisers leave it at 0. */
  readonly confidence: number;
}
export type Results = ArrayLike<ArrayLike<Alternative> & { readonly isFinal: boolean }>;

export interface HeardPart {
  readonly guesses: readonly Guess[];
  readonly final: boolean;
}

/** A final guess that the recogniser itself trusts less than this is asked back: common practice, no source. */
const TRUSTED = 0.5;

/** All of it first, the likeliest guess first; then, of several, each final one by itself, the newest first. */
export function heardIn(results: Results): readonly HeardPart[] {
  const pieces = Array.from(results, (result) => ({ guesses: Array.from(result), final: result.isFinal })).filter(({ guesses }) => guesses.length > 0);
  const last = pieces.at(-1);
  if (!last) return [];
  const before = pieces
    .slice(0, -1)
    .map(({ guesses }) => guesses[0]?.transcript ?? '')
    .join(' ');
  const whole: HeardPart = { guesses: guessesOf(last.guesses, last.final, `${before} `), final: pieces.every(({ final }) => final) };
  if (pieces.length === 1) return [whole];
  const single = pieces.filter(({ final }) => final).map(({ guesses }): HeardPart => ({ guesses: guessesOf(guesses, true, ''), final: true }));
  return [whole, ...single.toReversed()];
}

const guessesOf = (alternatives: readonly Alternative[], final: boolean, before: string): Guess[] =>
  alternatives.map(({ transcript, confidence }) => ({
    text: `${before}${transcript}`.replace(/\s+/g, ' ').trim(),
    ...(final && confidence > 0 && confidence < TRUSTED && { doubtful: true }),
  }));

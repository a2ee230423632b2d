// From what the recogniser believes it heard to what the person told, among the words understood right now. Strict: a
// candidate counts only when all of it is an allowed word, a light with its arrows, or a value to set. Where the
// candidates disagree the person is asked again, unless it is a value, which is read back anyway.
import type { Vocabulary } from '../hearing/languages/heardLanguage.ts';
import { inputOf, lightWith, type ArrowWord, type LightWord } from '../sweep/meaning.ts';
import { WORDS, type Input, type Word } from '../sweep/inputs.ts';
import type { Take } from './ownWords/take.ts';
import { correctionsIn } from './corrections.ts';
import { writeSteps } from '../sweep/scale.ts';

/** One of the recogniser's guesses, likeliest first. */
export interface Guess {
  readonly text: string;
  /** Not sure enough by itself: to be asked back whatever it says. */
  readonly doubtful?: boolean;
  /** The words as they sounded, where they are good enough to be learned from. */
  readonly takes?: readonly Take[];
}

export type Match =
  | Taken
  /** Meant for the panel, but not clear enough to act on; `best` is what it most likely was. */
  | { readonly is: 'unclear'; readonly best: Taken | null }
  /** Other talk, or the beginning of something that may go on. */
  | { readonly is: 'ignored' };

export interface Taken {
  readonly is: 'taken';
  readonly input: Input;
  /** How it is shown and read back. */
  readonly words: string;
}

/** `final`: the person has stopped; before that, only what cannot go on is taken. */
export type StrictMatch = (candidates: readonly Guess[], allowed: readonly Word[], final: boolean) => Match;

export function strictMatcherFor(language: Vocabulary): StrictMatch {
  const { words: taught } = language;
  const { wordsOf, correctionIn } = correctionsIn(language);
  const spelt = (phrase: string): string => wordsOf(phrase).join(' ');
  const set = spelt(taught.set.say);
  const said = new Map(WORDS.map((word) => [word, new Set([taught[word].say, ...taught[word].also].map(spelt))]));

  function readingOf(words: readonly string[], allowed: readonly Word[]): Taken | null {
    const heard = words.join(' ');
    const value = allowed.includes('set') ? correctionIn(words[0] === set ? words.slice(1) : words) : null;
    if (value !== null) return { is: 'taken', input: { told: 'set', value, by: 'voice', heard }, words: `${taught.set.say} ${writeSteps(value)}` };
    const word = wordFor(heard, allowed);
    if (word !== null) return { is: 'taken', input: inputOf(word, 'voice', heard), words: taught[word].say };
    return pairIn(words, allowed, heard);
  }

  /** A light and its arrows in one breath, in either order. */
  function pairIn(words: readonly string[], allowed: readonly Word[], heard: string): Taken | null {
    for (let cut = 1; cut < words.length; cut++) {
      const parts = [wordFor(words.slice(0, cut).join(' '), allowed), wordFor(words.slice(cut).join(' '), allowed)];
      const light = parts.find(isLight);
      const arrows = parts.find(isArrows);
      if (light && arrows) return { is: 'taken', input: lightWith(light, arrows, 'voice', heard), words: `${taught[light].say} ${taught[arrows].say}` };
    }
    return null;
  }

  function wordFor(heard: string, allowed: readonly Word[]): Exclude<Word, 'set'> | null {
    const found = allowed.find((word) => said.get(word)?.has(heard));
    return found === undefined || found === 'set' ? null : found;
  }

  const looksLikeSetting = (words: readonly string[], allowed: readonly Word[]): boolean => allowed.includes('set') && words[0] === set && words.length > 1;

  return (candidates, allowed, final) => {
    const heard = candidates.map(({ text }) => wordsOf(text));
    const readings = heard.flatMap((words) => readingOf(words, allowed) ?? []);
    const [first] = readings;
    if (!first) return final && heard.some((words) => looksLikeSetting(words, allowed)) ? { is: 'unclear', best: null } : { is: 'ignored' };
    if (!final && (language.deniesBehind || mayGoOn(first.input, allowed))) return { is: 'ignored' };
    const agreed = first.input.told === 'set' || readings.every(({ words }) => words === first.words);
    if (agreed) return first;
    return final ? { is: 'unclear', best: first } : { is: 'ignored' };
  };
}

const LIGHTS: readonly (Word | null)[] = ['solid', 'delayed', 'flicker', 'nothing'] satisfies LightWord[];
const ARROWS: readonly (Word | null)[] = ['left', 'right', 'balanced', 'lopsided'] satisfies ArrowWord[];
const isLight = (word: Word | null): word is LightWord => LIGHTS.includes(word);
const isArrows = (word: Word | null): word is ArrowWord => ARROWS.includes(word);

/** "Flicker" may become "flicker left", and "plus one" "plus one two". */
function mayGoOn(input: Input, allowed: readonly Word[]): boolean {
  if (input.told === 'set') return true;
  const pairs = allowed.some(isLight) && allowed.some(isArrows);
  return pairs && (input.told === 'arrows' || (input.told === 'verdict' && input.verdict.arrows === 'none'));
}

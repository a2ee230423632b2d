// What was told in two parts: a light with its arrows in one breath, or one word twice, heard in two ways.
import type { HeardLanguage } from '../../hearing/languages/heardLanguage.ts';
import { inputOf, lightWith, type ArrowWord, type LightWord } from '../../sweep/meaning.ts';
import type { Input, Word } from '../../sweep/inputs.ts';
import type { Nearest } from './commands.ts';

/** One way to read what was heard. */
export interface Interpretation {
  readonly words: string;
  readonly input: Input;
  readonly apart: number;
  readonly doubtful: boolean;
}

/** "Came on late, both uneven". */
const LONGEST_PAIR = 7;
const LONGEST_TWICE = 4;

/** What is near these words, of what counts now. */
export type Near = (words: readonly string[]) => ReturnType<Nearest>;

/** Asks once for each row of words. */
export function remembering(nearest: Nearest, allowed: readonly Word[]): Near {
  const known = new Map<string, ReturnType<Nearest>>();
  return (words) => {
    const text = words.join(' ');
    let found = known.get(text);
    if (!found) known.set(text, (found = nearest(words, allowed)));
    return found;
  };
}

const LIGHTS: readonly Word[] = ['solid', 'delayed', 'flicker', 'nothing'] satisfies LightWord[];
const ARROWS: readonly Word[] = ['left', 'right', 'balanced', 'lopsided'] satisfies ArrowWord[];
const isLight = (word: Word): word is LightWord => LIGHTS.includes(word);
const isArrows = (word: Word): word is ArrowWord => ARROWS.includes(word);

/** A light and its arrows in one breath, in either order; both must be near. */
export function pairsIn(words: readonly string[], allowed: readonly Word[], near: Near, taught: HeardLanguage['words']): Interpretation[] {
  if (!allowed.some(isLight) || !allowed.some(isArrows)) return [];
  const found: Interpretation[] = [];
  for (let cut = 1; cut < words.length && words.length <= LONGEST_PAIR; cut++) {
    const parts = [words.slice(0, cut), words.slice(cut)] as const;
    for (const [lightPart, arrowPart] of [parts, parts.toReversed()]) {
      const light = near(lightPart ?? []).find(({ word }) => isLight(word));
      const arrow = near(arrowPart ?? []).find(({ word }) => isArrows(word));
      if (!light || !arrow || !isLight(light.word) || !isArrows(arrow.word)) continue;
      found.push({
        words: `${taught[light.word].say} ${taught[arrow.word].say}`,
        input: lightWith(light.word, arrow.word, 'voice', words.join(' ')),
        apart: Math.max(light.apart, arrow.apart),
        doubtful: false,
      });
    }
  }
  return found;
}

/** One word said twice, and heard in two ways: "whole thing holding". */
export function twiceIn(words: readonly string[], near: Near, taught: HeardLanguage['words']): Interpretation[] {
  const found: Interpretation[] = [];
  for (let cut = 1; cut < words.length && words.length <= LONGEST_TWICE; cut++) {
    const [one] = near(words.slice(0, cut));
    const [other] = near(words.slice(cut));
    if (!one || one.word !== other?.word) continue;
    found.push({ words: taught[one.word].say, input: inputOf(one.word, 'voice', words.join(' ')), apart: Math.max(one.apart, other.apart), doubtful: false });
  }
  return found;
}

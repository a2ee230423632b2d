// Look-up over the logbook's list: by what is typed, letter by letter, and by what is said.
import type { Vocabulary } from '../../hearing/languages/heardLanguage.ts';
import { pairingsOf, type Kit } from '../../kit/kit.ts';
import type { Shelved } from '../shelf.ts';
import { askedWords, carriesNothing } from './asking.ts';
import { find, indexOf, isKnown, type SearchIndex } from './searchIndex.ts';
import { wordsIn } from './words.ts';

export interface Finder {
  /** In which questions are asked. */
  readonly language: Vocabulary;
  readonly shelf: readonly Shelved[];
  readonly index: SearchIndex;
}

/** Prepares look-up for one state of the logbook; what is retired comes after what is in use. */
export function finderOf(language: Vocabulary, kit: Kit, shelf: readonly Shelved[]): Finder {
  const pairing = pairingsOf(kit);
  const inUseFirst = [...shelf.filter(({ retired }) => !retired), ...shelf.filter(({ retired }) => retired)];
  const documents = inUseFirst.map(({ subject, situation }) => {
    const { body, lens } = situation ? pairing(situation) : { body: null, lens: null };
    const engraved = [body?.serial, body?.model, lens?.serial, lens?.model];
    const lengths = [`${subject.focalLength}mm`, `${subject.distance / 1000}m`];
    const texts = [subject.body, subject.lens, ...lengths, ...engraved.filter((text) => typeof text === 'string')];
    // Names are asked for as they sound where they can be written in more ways than one.
    return language.parted ? [...texts, ...texts.map((text) => language.parted?.(text) ?? text)] : texts;
  });
  return { language, shelf: inUseFirst, index: indexOf(documents) };
}

/** What fits the words typed so far, in any order, best first, then newest first. Nothing typed: all. */
export const lookUpTyped = (finder: Finder, typed: string): Shelved[] => found(finder, wordsIn(typed));

/**
 * What fits a spoken question such as "look up the eighty-five on the old body". Words the logbook does not know are
 * let pass.
 */
export function lookUpSpoken(finder: Finder, phrase: string): Shelved[] {
  const { language, index } = finder;
  const known = askedWords(language, phrase).filter((word) => !carriesNothing(language, word) && isKnown(index, word));
  return known.length === 0 ? [] : closest(finder, known);
}

/**
 * All the words if anything has them all; else without the last, and so on, because a mis-heard word should not hide
 * the rest.
 */
function closest(finder: Finder, words: readonly string[]): Shelved[] {
  const all = found(finder, words);
  return all.length > 0 || words.length === 1 ? all : closest(finder, words.slice(0, -1));
}

const found = ({ shelf, index }: Finder, words: readonly string[]): Shelved[] => find(index, words).flatMap((document) => shelf[document] ?? []);

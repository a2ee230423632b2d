// What is told, without what people say around it: courtesy and hesitation at both ends, then what makes a statement of it.
import type { Vocabulary } from '../../hearing/languages/heardLanguage.ts';
import type { Word } from '../../sweep/inputs.ts';
import { isHesitation } from './weakSpeech.ts';
import type { Pronounce } from './pronouncer.ts';
import { bareWordsIn } from './spokenText.ts';

/** What is left of the words heard, and what it costs to have left the rest out; `everyday`: for words of daily talk. */
export interface Rest {
  readonly words: readonly string[];
  readonly cost: number;
  readonly everyday: number;
}

export interface Courtesy {
  /** Without courtesy and hesitation at either end; none where there is nothing else. */
  trimmed(heard: readonly string[]): readonly string[];
  /** Every way to leave something out, the least first. */
  restsOf(heard: readonly string[]): readonly Rest[];
  isEveryday(word: Word): boolean;
}

const TRIMMED = 0.03;
/** Each article, and each further word of a statement. */
const STRIPPED = 0.03;
const EVERYDAY_ARTICLE = 0.05;
const EVERYDAY_FRAME = 0.15;

export function courtesyIn(language: Vocabulary, pronounce: Pronounce): Courtesy {
  const { courtesies, articles, frames, places, everyday } = language.around;
  const bareWords = bareWordsIn(language);
  const phrases = courtesies.map(bareWords).sort((a, b) => b.length - a.length);
  const [article, frame, place] = [articles, frames, places].map((words) => new Set(words.flatMap(bareWords))) as [Set<string>, Set<string>, Set<string>];

  /** How many words of courtesy stand at the start, or at the end. */
  function courtesyAt(words: readonly string[], end: 'start' | 'end'): number {
    for (const phrase of phrases) {
      const there = end === 'start' ? words.slice(0, phrase.length) : words.slice(-phrase.length);
      if (there.join(' ') === phrase.join(' ')) return phrase.length;
    }
    const word = end === 'start' ? words[0] : words.at(-1);
    return word !== undefined && isHesitation(pronounce(word)) ? 1 : 0;
  }

  function trimmed(heard: readonly string[]): readonly string[] {
    let rest = heard;
    for (let many = courtesyAt(rest, 'start'); many > 0; many = courtesyAt(rest, 'start')) rest = rest.slice(many);
    for (let many = courtesyAt(rest, 'end'); many > 0; many = courtesyAt(rest, 'end')) rest = rest.slice(0, -many);
    return rest;
  }

  function restsOf(heard: readonly string[]): Rest[] {
    const rests: Rest[] = [{ words: heard, cost: 0, everyday: 0 }];
    const core = trimmed(heard);
    if (core.length === 0) return rests;
    if (core.length < heard.length) rests.push({ words: core, cost: TRIMMED, everyday: TRIMMED });
    const bare = core.filter((word) => !article.has(word) && !frame.has(word) && !place.has(word));
    if (bare.length === 0 || bare.length === core.length) return rests;
    const count = (of: ReadonlySet<string>): number => core.filter((word) => of.has(word)).length;
    const [ofArticles, ofFrames, ofPlaces] = [count(article), count(frame), count(place)];
    rests.push({
      words: bare,
      cost: STRIPPED * (ofArticles + ofFrames + ofPlaces),
      everyday: ofPlaces > 0 ? Infinity : EVERYDAY_ARTICLE * ofArticles + (ofFrames > 0 ? EVERYDAY_FRAME + STRIPPED * ofFrames : 0),
    });
    return rests;
  }

  return { trimmed, restsOf, isEveryday: (word) => everyday.includes(word) };
}

// Finding situations while their name is still being typed, over thousands. Built once for a state of the logbook:
// every word that occurs, and the situations it occurs in. A query then looks at words, not at situations.
import { couldBegin, lettersOf, slipsForgiven, slipsToBegin } from './typo.ts';
import { findableWords } from './words.ts';

interface IndexedWord {
  readonly text: string;
  readonly letters: number;
  /** Documents that hold it, in ascending order. */
  readonly documents: number[];
}

export interface SearchIndex {
  readonly words: readonly IndexedWord[];
  readonly count: number;
}

/** Lays the index over documents, each given as the texts under which it should be found. */
export function indexOf(documents: readonly (readonly string[])[]): SearchIndex {
  const words = new Map<string, IndexedWord>();
  const cut = new Map<string, readonly string[]>();
  const wordsOf = (text: string) => {
    const known = cut.get(text) ?? findableWords(text);
    cut.set(text, known);
    return known;
  };
  documents.forEach((texts, document) => {
    for (const text of new Set(texts.flatMap(wordsOf))) {
      const word = words.get(text) ?? { text, letters: lettersOf(text), documents: [] };
      words.set(text, word);
      word.documents.push(document);
    }
  });
  return { words: [...words.values()], count: documents.length };
}

/** How well a typed word fits a word of the index: whole, as its beginning, inside it (serials), or with slips. */
const WHOLE = 8;
const BEGINNING = 4;
const INSIDE = 2;
const WITH_A_SLIP = 1;
/** Shorter than this, a word is looked for at the beginning only. */
const INSIDE_FROM = 3;

/**
 * The documents that answer all the words, best first, and of equals in their own order. Slips are forgiven only where
 * nothing fits as typed. No words: every document.
 */
export function find(index: SearchIndex, typed: readonly string[]): number[] {
  const asTyped = answering(index, typed, exactFit);
  return asTyped.length > 0 || typed.length === 0 ? asTyped : answering(index, typed, closestFit);
}

/** Does any word of the index fit this one, slips forgiven? */
export const isKnown = (index: SearchIndex, typed: string): boolean => answering(index, [typed], closestFit).length > 0;

/** The fit of a typed word to a word of the index, 0 for none. */
type WordFit = (typed: string, letters: number, word: IndexedWord) => number;

const exactFit: WordFit = (typed, _letters, { text }) => {
  if (text.startsWith(typed)) return text.length === typed.length ? WHOLE : beginning(typed, text);
  return typed.length >= INSIDE_FROM && text.includes(typed) ? INSIDE : 0;
};

const closestFit: WordFit = (typed, letters, word) => {
  const exact = exactFit(typed, letters, word);
  const most = slipsForgiven(typed.length);
  if (exact > 0 || most === 0 || !couldBegin(letters, word.letters, most)) return exact;
  const slips = slipsToBegin(typed, word.text, most);
  return slips === null ? 0 : WITH_A_SLIP / slips;
};

/** A number half typed may go on; a whole one that goes on is another number, so 85 is not the beginning of 850. */
const beginning = (typed: string, text: string): number => (/^\d+$/.test(typed) && /^\d/.test(text) ? BEGINNING / 2 : BEGINNING);

function answering(index: SearchIndex, typed: readonly string[], fit: WordFit): number[] {
  let score = new Float64Array(index.count).fill(1);
  for (const word of typed) {
    const fits = fitPerDocument(index, word, fit);
    score = score.map((sum, document) => {
      const more = fits[document] ?? 0;
      return sum > 0 && more > 0 ? sum + more : 0;
    });
  }
  const found: number[] = [];
  score.forEach((sum, document) => {
    if (sum > 0) found.push(document);
  });
  return typed.length === 0 ? found : found.sort((a, b) => (score[b] ?? 0) - (score[a] ?? 0) || a - b);
}

/** Every word of a document that fits adds to it, so a focal length that its lens is also called by comes first. */
function fitPerDocument(index: SearchIndex, typed: string, fit: WordFit): Float64Array {
  const letters = lettersOf(typed);
  const fits = new Float64Array(index.count);
  for (const word of index.words) {
    const how = fit(typed, letters, word);
    if (how === 0) continue;
    for (const document of word.documents) fits[document] = (fits[document] ?? 0) + how;
  }
  return fits;
}

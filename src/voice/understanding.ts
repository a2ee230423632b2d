// All that turns what was heard into what was told, in the panel's language. Reading its lexicon takes a moment, so this is
// only read when somebody listens.
import { englishLanguage } from './phonetic/language.ts';
import { matcherFor } from './phonetic/match.ts';

export const matcher = matcherFor(englishLanguage());

export { decide } from './askBack.ts';
export { spokenWordsFor } from './wordsNow.ts';

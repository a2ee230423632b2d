// The matcher of the language, made once: reading its lexicon takes a moment, so this is only read when somebody listens.
import { englishLanguage } from './phonetic/language.ts';
import { matcherFor } from './phonetic/match.ts';

export const matcher = matcherFor(englishLanguage());

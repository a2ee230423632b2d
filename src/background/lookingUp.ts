// What a look-up in the address bar needs of each language: the browser lets a background script read nothing on demand.
import { ENGLISH_WRITTEN } from '../hearing/languages/en/vocabulary.ts';
import type { Vocabulary } from '../hearing/languages/heardLanguage.ts';
import type { Language } from '../language.ts';
import { words as english } from '../words/en/lookUp.ts';
import type { LookUpWords } from '../words/lookUpWords.ts';

interface LookingUp {
  readonly say: LookUpWords;
  readonly asked: Vocabulary;
}

const ENGLISH: LookingUp = { say: english, asked: ENGLISH_WRITTEN };

export const LOOKING_UP: Readonly<Record<Language, LookingUp>> = { en: ENGLISH, de: ENGLISH, es: ENGLISH, fr: ENGLISH, ja: ENGLISH };

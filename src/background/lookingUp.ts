// What a look-up in the address bar needs of each language: the browser lets a background script read nothing on demand.
import { GERMAN_WRITTEN } from '../hearing/languages/de/vocabulary.ts';
import { ENGLISH_WRITTEN } from '../hearing/languages/en/vocabulary.ts';
import { SPANISH_WRITTEN } from '../hearing/languages/es/vocabulary.ts';
import { FRENCH_WRITTEN } from '../hearing/languages/fr/vocabulary.ts';
import type { Vocabulary } from '../hearing/languages/heardLanguage.ts';
import { JAPANESE_WRITTEN } from '../hearing/languages/ja/vocabulary.ts';
import type { Language } from '../language.ts';
import { words as german } from '../words/de/lookUp.ts';
import { words as english } from '../words/en/lookUp.ts';
import { words as spanish } from '../words/es/lookUp.ts';
import { words as french } from '../words/fr/lookUp.ts';
import { words as japanese } from '../words/ja/lookUp.ts';
import type { LookUpWords } from '../words/lookUpWords.ts';

interface LookingUp {
  readonly say: LookUpWords;
  readonly asked: Vocabulary;
}

export const LOOKING_UP: Readonly<Record<Language, LookingUp>> = {
  en: { say: english, asked: ENGLISH_WRITTEN },
  de: { say: german, asked: GERMAN_WRITTEN },
  es: { say: spanish, asked: SPANISH_WRITTEN },
  fr: { say: french, asked: FRENCH_WRITTEN },
  ja: { say: japanese, asked: JAPANESE_WRITTEN },
};

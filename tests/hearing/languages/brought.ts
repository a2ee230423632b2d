// What each language brings to the contract of all of them: how it is heard, how it says a correction, and talk that is not meant for the panel.
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';
import { HEARD } from '../../../src/hearing/languages.ts';
import { sayCorrection as sayInGerman } from '../../../src/hearing/languages/de/sayCorrection.ts';
import { sayCorrection as sayInEnglish } from '../../../src/hearing/languages/en/sayCorrection.ts';
import { sayCorrection as sayInSpanish } from '../../../src/hearing/languages/es/sayCorrection.ts';
import { sayCorrection as sayInFrench } from '../../../src/hearing/languages/fr/sayCorrection.ts';
import { sayCorrection as sayInJapanese } from '../../../src/hearing/languages/ja/sayCorrection.ts';
import { LANGUAGES, type Language } from '../../../src/language.ts';
import { TALK as germanTalk } from './de/talk.ts';
import { TALK as englishTalk } from './en/talk.ts';
import { TALK as spanishTalk } from './es/talk.ts';
import { TALK as frenchTalk } from './fr/talk.ts';
import { TALK as japaneseTalk } from './ja/talk.ts';

interface Brought {
  readonly name: Language;
  readonly language: HeardLanguage;
  readonly sayCorrection: (value: number) => string;
  readonly talk: readonly string[];
}

const OWN: Readonly<Record<Language, Pick<Brought, 'sayCorrection' | 'talk'>>> = {
  en: { sayCorrection: sayInEnglish, talk: englishTalk },
  de: { sayCorrection: sayInGerman, talk: germanTalk },
  es: { sayCorrection: sayInSpanish, talk: spanishTalk },
  fr: { sayCorrection: sayInFrench, talk: frenchTalk },
  ja: { sayCorrection: sayInJapanese, talk: japaneseTalk },
};

export const EVERY_LANGUAGE: readonly Brought[] = await Promise.all(
  LANGUAGES.map(async (name) => ({ name, language: await HEARD[name].sounded(), ...OWN[name] })),
);

// The words in which the panel is spoken to, in the language in which it listens. The screens may be in another: a sentence that names a
// word to say takes it from here, so that what is shown is what is understood.
import { signal } from '@preact/signals';
import { HEARD } from '../hearing/languages.ts';
import type { Vocabulary } from '../hearing/languages/heardLanguage.ts';
import type { Language } from '../language.ts';
import type { Word } from '../sweep/inputs.ts';

const read = signal<Vocabulary | null>(null);

export async function readVocabulary(language: Language): Promise<void> {
  read.value = await HEARD[language].written();
}

/** Throws before it has been read. */
export function vocabulary(): Vocabulary {
  if (read.value === null) throw new Error('The words to say are used before they are read.');
  return read.value;
}

/** What a person says for it. */
export const taught = (word: Word): string => vocabulary().words[word].say;

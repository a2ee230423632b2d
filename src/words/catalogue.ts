// Every sentence that is shown or said, by area and language. An area is read when the screen that needs it is; its
// interface says which sentences there are, so that a language in which one is missing does not compile.
import { signal } from '@preact/signals';
import type { Language, Languages } from '../language.ts';
import type { Area, AreasOf, Words } from './areas.ts';
import { readFirst } from './first.ts';
import { inUse } from './inUse.ts';
import type { InWords } from './inWords.ts';
import { readVocabulary } from './taught.ts';

export type { Area };

/** Literal imports: the extension's own policy lets nothing be fetched. */
const AREAS_OF: Readonly<Record<Language, () => Promise<{ readonly areas: AreasOf }>>> = {
  en: () => import('./en/areas.ts'),
  de: () => import('./de/areas.ts'),
  es: () => import('./es/areas.ts'),
  fr: () => import('./fr/areas.ts'),
  ja: () => import('./ja/areas.ts'),
};

const read = signal<Partial<Record<Language, Partial<Words>>>>({});
/** All that has been asked for: a change of language reads it anew. */
const asked = new Set<Area>();

/** Reads these areas of the languages in use, and the words to say; at once where they are there already. */
export async function readWords(...areas: readonly Area[]): Promise<void> {
  for (const area of areas) asked.add(area);
  let before: Languages;
  do {
    before = inUse.peek();
    await fill(before, areas);
    // The languages may have changed meanwhile.
  } while (before !== inUse.peek());
}

/** From now on these are the languages, once everything that has been asked for is there in them. */
export async function changeLanguages(next: Languages): Promise<void> {
  const { screens, voice } = inUse.peek();
  if (screens === next.screens && voice === next.voice) return;
  let read: number;
  do {
    read = asked.size;
    await Promise.all([readFirst(next.screens), fill(next, [...asked])]);
    // A screen may have opened meanwhile, and asked for more.
  } while (asked.size > read);
  inUse.value = next;
}

async function fill({ screens, voice }: Languages, areas: readonly Area[]): Promise<void> {
  await Promise.all([readVocabulary(voice), ...[...new Set([screens, voice])].map((language) => readIn(language, areas))]);
}

async function readIn(language: Language, areas: readonly Area[]): Promise<void> {
  const wanted = areas.filter((area) => read.peek()[language]?.[area] === undefined);
  if (wanted.length === 0) return;
  const { areas: of } = await AREAS_OF[language]();
  const found = await Promise.all(wanted.map(async (area) => [area, (await of[area]()).words] as const));
  read.value = { ...read.peek(), [language]: { ...read.peek()[language], ...Object.fromEntries(found) } };
}

function wordsIn<Name extends Area>(language: Language, area: Name): Words[Name] {
  const found = read.value[language]?.[area];
  if (found === undefined) throw new Error(`The words of “${area}” are used before they are read.`);
  return found;
}

/** The sentences of an area that has been read. Throws for one that has not: whoever shows it reads it first. */
export const words = <Name extends Area>(area: Name): Words[Name] => wordsIn(inUse.value.screens, area);

/** The same, to be spoken. */
export const aloud = <Name extends Area>(area: Name): Words[Name] => wordsIn(inUse.value.voice, area);

/** What is said in the one language and shown in the other; where both are said alike, one sentence is enough. */
export const saidAndShown = <Name extends Area>(area: Name, make: (words: Words[Name], language: Language) => InWords | string): InWords => {
  const { screens, voice } = inUse.value;
  const [spoken, written] = [make(aloud(area), voice), make(words(area), screens)];
  return {
    spoken: typeof spoken === 'string' ? spoken : spoken.spoken,
    written: typeof written === 'string' ? written : written.written,
  };
};

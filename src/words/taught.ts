// The words in which the panel is spoken to, in the language in which it listens. The screens may be in another: a sentence that names a
// word to say takes it from here, so that what is shown is what is understood.
import { signal } from '@preact/signals';
import { HEARD } from '../hearing/languages.ts';
import type { Vocabulary } from '../hearing/languages/heardLanguage.ts';
import type { Language } from '../language.ts';
import type { Word } from '../sweep/inputs.ts';
import { inUse } from './inUse.ts';

const read = signal<Partial<Record<Language, Vocabulary>>>({});

export async function readVocabulary(language: Language): Promise<void> {
  if (read.peek()[language]) return;
  const found = await HEARD[language].written();
  read.value = { ...read.peek(), [language]: found };
}

/** Throws before it has been read. */
export function vocabulary(): Vocabulary {
  const found = read.value[inUse.value.voice];
  if (found === undefined) throw new Error('The words to say are used before they are read.');
  return found;
}

/** What a person says for it. */
export const taught = (word: Word): string => vocabulary().words[word].say;

/** "plus six": a correction in the words that are taught. */
export function correctionSaid(value: number): string {
  const { signs, numbers } = vocabulary();
  return value === 0 ? numbers.say(0) : `${(value > 0 ? signs.plus : signs.minus)[0]} ${numbers.say(Math.abs(value))}`;
}

/** "minus one two": as it is said where every word is taught by itself. */
export function correctionSpelt(value: number): string {
  const { signs } = vocabulary();
  return `${(value > 0 ? signs.plus : signs.minus)[0]} ${digitsSaid(value)}`;
}

/** "eight five". */
export const digitsSaid = (value: number): string => [...String(Math.abs(value))].map((digit) => vocabulary().numbers.say(Number(digit))).join(' ');

/** What begins a question to the logbook. */
export const questionSaid = (): string => vocabulary().question.openings[0];

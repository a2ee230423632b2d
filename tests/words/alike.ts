// What is written in another language as it is in English, and why it may be.
import type { Language } from '../../src/language.ts';

type Other = Exclude<Language, 'en'>;

/** Names, and what stands for a unit: the same everywhere. */
export const NAMES = /Corvid 85|Sweepbook|\bA[46]\b|\bLetter\b/g;
export const UNITS = /(?<!\p{L})(mm|cm|m|s|h|min|ft|in|Hz|ISO|EV|MB|kB)(?!\p{L})/gu;

/** Sentences, without names, numbers and signs, that are words of both languages. */
export const ALIKE: Readonly<Record<Other, Readonly<Record<string, string>>>> = {
  de: {
    Sensor: 'the trade has this word',
    Tele: 'the trade has this word',
    Zooms: 'the trade has this word',
    Band: 'the band is neuter in German, and the same word',
    Name: 'a word of German',
    Plan: 'a word of German',
    Pause: 'a word of German',
    Start: 'a word of German',
    Version: 'a word of German',
  },
  es: {
    Sensor: 'the trade has this word',
    Tele: 'the trade has this word',
    Zooms: 'the trade has this word',
    diagonal: 'a word of Spanish',
    Factor: 'a word of Spanish',
    Plan: 'a word of Spanish',
    No: 'a word of Spanish',
  },
  fr: {
    Zooms: 'the trade has this word',
    Version: 'a word of French',
    Distance: 'a word of French',
    Distances: 'a word of French',
    Date: 'a word of French',
    Note: 'a word of French',
    Standard: 'a word of French',
    Pause: 'a word of French',
    pause: 'a word of French',
    Centre: 'a word of French',
    centre: 'a word of French',
    Corrections: 'a word of French',
    Licences: 'a word of French',
  },
  ja: {},
};

/** Small words of English that are words of the other language, too. */
export const SHARED: Readonly<Record<Other, readonly string[]>> = { de: ['was', 'will'], es: ['has'], fr: [], ja: [] };

// English: signs, and what stands around a command or a value.
import type { SaysNothing } from '../heardLanguage.ts';

/** Words for the sign of a correction. */
export const SIGNS = { plus: ['plus', 'positive'], minus: ['minus', 'negative'] } as const;

/** What people say to whoever they tell something, and while they think, before it or after it. */
const COURTESIES: readonly string[] = [
  'please',
  'thanks',
  'thank you',
  'okay',
  'ok',
  'um',
  'hmm',
  'mhm',
  'uh',
  'er',
  'ah',
  'oh',
  'so',
  'well',
  'and',
  'just',
  'yes',
  'yeah',
  'then',
  'lets',
  'can you',
  'could you',
  'would you',
  'will you',
  'i want to',
  'id like to',
  'i would like to',
  'i think',
  'i said',
];

export const AROUND = {
  courtesies: COURTESIES,
  articles: ['the', 'a', 'an', 'one'],
  // What a statement is made of.
  frames: ['it', 'its', 'is', 'was', 'that', 'thats', 'this', 'i', 'im', 'am', 'ive', 'we', 'are', 'has', 'been', 'came'],
  // When and where.
  places: ['now', 'there', 'here', 'again'],
  // "That is right", "what is left", "back again", "next time".
  everyday: ['left', 'right', 'back', 'next', 'same'],
} as const satisfies SaysNothing;

/** What may stand before a value. */
export const SETTING: readonly string[] = ['set', 'set it', 'set to', 'set it to', 'set the value', 'value', 'make it'];

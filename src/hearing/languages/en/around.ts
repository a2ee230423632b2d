// English: signs, and what stands around a command or a value.

/** Words for the sign of a correction. */
export const SIGNS = { plus: ['plus', 'positive'], minus: ['minus', 'negative'] } as const;

/** Words around a command that say nothing. */
export const FILLERS: readonly string[] = [
  'um',
  'uh',
  'er',
  'ah',
  'please',
  'okay',
  'ok',
  'now',
  'the',
  'a',
  'it',
  'its',
  'is',
  'that',
  'thats',
  'so',
  'and',
  'well',
  'just',
  'yeah',
  'im',
  'i',
  'am',
  'there',
];

/** What may stand before a value. */
export const SETTING: readonly string[] = ['set', 'set it', 'set to', 'set it to', 'set the value', 'value', 'make it'];

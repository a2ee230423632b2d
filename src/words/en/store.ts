// English: what went wrong with what lies on this computer. What the browser says stands in brackets, in its own words.
import type { StoreWords } from '../storeWords.ts';

export const words: StoreWords = {
  fault: ({ is, why }) =>
    is === 'not read'
      ? `What is stored cannot be read (${why ?? 'no answer'}). Close this panel and open it again.`
      : `Nothing can be saved just now (${why ?? 'no answer'}). Leave this panel open and free some space on the disk. ` +
        'Everything is kept here and is saved as soon as that works.',
  tryNow: 'Try now',
  taught: {
    'not read': 'The words you taught cannot be read. Teach them again in the hearing check. Everything else is untouched.',
    'not kept': 'What you taught cannot be kept. Free some space on the disk, then say the word again.',
    'not erased': 'The words you taught cannot be erased just now. Try again.',
  },
};

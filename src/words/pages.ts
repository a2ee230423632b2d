// What only the pages in tabs of their own say. Each page reads its own at once, so most of these are no areas of the catalogue:
// the panel would carry them for nothing.
export { words as cardWords } from './en/card.ts';
export { words as hearingWords } from './en/hearing.ts';
export { words as microphoneWords } from './en/microphone.ts';
export { words as paperWords } from './en/paper.ts';
export { words as storeWords } from './en/store.ts';
export { words as workshopWords } from './en/workshop.ts';

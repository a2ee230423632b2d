// What only the pages for paper say. Each page reads its own at once, so these are no areas of the catalogue: the panel
// would carry them for nothing.
export { words as cardWords } from './en/card.ts';
export { words as workshopWords } from './en/workshop.ts';

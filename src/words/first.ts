// The words that come with the panel's first script, and no area of the catalogue: the build draws the start into the page with
// them before any script runs, and an area that cannot be read could not say so. One language, until a page is drawn for each.
export { words as firstWords } from './en/first.ts';

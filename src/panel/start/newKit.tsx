// The fields of what is not in the kit yet, and what keeps it: one part, read when something is added.
export { keepTyped } from './keep.ts';
export { NewBody } from './newBody.tsx';
export { NewLens } from './newLens.tsx';
export { NewSituation } from './newSituation.tsx';

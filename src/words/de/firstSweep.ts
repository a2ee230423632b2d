// German: the areas that are read from the opened panel to the result of a first sweep, in one file: it is read sooner than seventeen, and weighs
// a quarter less.
export { words as conditions } from './conditions.ts';
export { words as entered } from './entered.ts';
export { words as firstHold } from './firstHold.ts';
export { words as kit } from './kit.ts';
export { words as logbook } from './logbook.ts';
export { words as lookUp } from './lookUp.ts';
export { words as manner } from './manner.ts';
export { words as placed } from './placed.ts';
export { words as result } from './result.ts';
export { words as session } from './session.ts';
export { words as sound } from './sound.ts';
export { words as spoken } from './spoken.ts';
export { words as start } from './start.ts';
export { words as store } from './store.ts';
export { words as sweep } from './sweep.ts';
export { words as told } from './told.ts';
export { words as trouble } from './trouble.ts';

// Every unit test finds the English words read, as a screen does that is shown.
import { AREAS, readWords } from '../../src/words/catalogue.ts';

await readWords(...AREAS);

// Every unit test finds the English words read, as a screen does that is shown.
import { AREAS } from '../../src/words/areas.ts';
import { readWords } from '../../src/words/catalogue.ts';

await readWords(...AREAS);

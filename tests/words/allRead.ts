// Every unit test finds the English words read, as a screen does that is shown.
import { areas } from '../../src/words/en/areas.ts';
import type { Area } from '../../src/words/areas.ts';
import { readWords } from '../../src/words/catalogue.ts';

await readWords(...(Object.keys(areas) as Area[]));

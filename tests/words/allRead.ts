// Every unit test finds the English words read, as a screen does that is shown.
import { areas } from '../../src/words/en/areas.ts';
import type { Area } from '../../src/words/areas.ts';
import { changeLanguages, readWords } from '../../src/words/catalogue.ts';

// A file that shares its worker with others finds English, whatever stood there.
await changeLanguages({ screens: 'en', voice: 'en' });
await readWords(...(Object.keys(areas) as Area[]));

// Every end-to-end test may ask the English sentences for what is shown, and those that name a word to say need it read.
import { readVocabulary } from '../../src/words/taught.ts';

await readVocabulary('en');

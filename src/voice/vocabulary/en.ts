// English: the words that a person is taught to say, for the screens and for what the panel says.
export { ENGLISH_TAG as LANGUAGE, TAUGHT } from '../../hearing/languages/en/words.ts';

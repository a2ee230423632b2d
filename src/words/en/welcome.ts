// English: the page that opens after the first install.
import type { WelcomeWords } from '../welcomeWords.ts';

export const words: WelcomeWords = {
  title: 'Sweepbook is installed',
  button: 'Press its button at the top of the browser. The panel opens beside the page.',
  hidden: 'If the button is not there, press the puzzle piece first, and pin Sweepbook.',
  shortcut: (keys) => `Or press ${keys}.`,
  first: 'Begin with the practice camera. It shows the light and the words before you stand at a real one.',
  picture: 'The top of the browser, with the puzzle piece and the button of Sweepbook',
};

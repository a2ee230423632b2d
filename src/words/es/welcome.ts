// Spanish: the page that opens after the first install.
import type { WelcomeWords } from '../welcomeWords.ts';

export const words: WelcomeWords = {
  title: 'Sweepbook está instalado',
  button: 'Pulse su botón en la parte superior del navegador. El panel se abre junto a la página.',
  hidden: 'Si no ve el botón, pulse antes la pieza de puzle y fije Sweepbook.',
  shortcut: (keys) => `O pulse ${keys}.`,
  first: 'Empiece con la cámara de práctica. Enseña la luz de enfoque y las palabras antes de usar una cámara real.',
  picture: 'La parte superior del navegador, con la pieza de puzle y el botón de Sweepbook',
};

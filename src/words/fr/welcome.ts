// French: the page that opens after the first install.
import type { WelcomeWords } from '../welcomeWords.ts';

export const words: WelcomeWords = {
  title: 'Sweepbook est installé',
  button: 'Appuyez sur son bouton en haut du navigateur. Le panneau s’ouvre à côté de la page.',
  hidden: 'Si vous ne voyez pas le bouton, appuyez d’abord sur la pièce de puzzle, puis épinglez Sweepbook.',
  shortcut: (keys) => `Ou appuyez sur ${keys}.`,
  first: 'Commencez par le simulateur. Il montre le témoin et les mots avant un véritable appareil.',
  picture: 'Le haut du navigateur, avec la pièce de puzzle et le bouton de Sweepbook',
};

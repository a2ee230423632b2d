// German: the page that opens after the first install.
import type { WelcomeWords } from '../welcomeWords.ts';

export const words: WelcomeWords = {
  title: 'Sweepbook ist installiert',
  button: 'Drücken Sie oben im Browser auf die Schaltfläche von Sweepbook. Die Seitenleiste öffnet sich neben der Seite.',
  hidden: 'Fehlt die Schaltfläche, drücken Sie zuerst auf das Puzzleteil und heften Sie Sweepbook an.',
  shortcut: (keys) => `Oder drücken Sie ${keys}.`,
  first: 'Beginnen Sie mit der Übungskamera. Sie zeigt das Licht und die Wörter, bevor Sie an einer echten stehen.',
  picture: 'Der obere Rand des Browsers mit dem Puzzleteil und der Schaltfläche von Sweepbook',
};

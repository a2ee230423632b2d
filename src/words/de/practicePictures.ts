// German: pictures that the practice camera takes.
import type { PracticePicturesWords } from '../practicePicturesWords.ts';
import { write } from './write.ts';

const STANDS = 'Sie steht zwei Meter vor Tafel und Rampe, mit 85\u00a0mm bei f/1,8.';

export const words: PracticePicturesWords = {
  title: 'Übungsbilder',
  simulated: 'Simuliert: Die Übungskamera zeichnet diese Bilder. Sie sagen nichts über Ihre eigene Kamera, und nichts davon wird gespeichert.',
  about: {
    one: `Die Übungskamera macht mit diesem Wert ein Bild mit Autofokus. ${STANDS}`,
    check: `Die Übungskamera macht ein Bild im Livebild, dann mit diesem Wert sechs mit Autofokus. ${STANDS}`,
    bracket: `Die Übungskamera macht ein Bild im Livebild, dann eines mit jedem Wert der Stufenserie. ${STANDS}`,
  },
  take: { one: 'Bild aufnehmen', check: 'Bilder aufnehmen', bracket: 'Bilder aufnehmen' },
  picture: (number) => `Übungsbild ${write.number(number)}`,
  another: 'Andere Übungs\u00adkamera',
  truth: {
    title: 'Wie diese Übungskamera wirklich ist',
    told: (centre, step) =>
      `Ihre wahre Mitte ist ${write.signed(centre, 1)}. Eine Stufe versetzt die Schärfe an der Tafel um ${write.unit(step, 'millimeter', 1)}.`,
  },
};

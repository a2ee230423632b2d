// German: screens without content.
import type { EmptyWords } from '../emptyWords.ts';

const STATIONS = 'Zeichnung: drei Plätze für das Stativ in einer Reihe. Der erste ist erledigt, der zweite kommt als Nächstes.';

export const words: EmptyWords = {
  logbook: {
    sentence: 'Ist ein Durchlauf beendet, steht hier sein Objektiv mit dem Wert zum Einstellen, dem Band und der Mitte.',
    drawn: 'Zeichnung: zwei Objektive, jedes mit seinem Wert und seinem Band im Korrektur\u00adbereich.',
    begin: 'Mit Objektiv beginnen',
  },
  plan: {
    sentence: 'Ein Plan entsteht aus Ihrer Ausrüstung: was zu messen ist, so geordnet, dass das Stativ am seltensten umzieht.',
    drawn: STATIONS,
    begin: 'Zur Ausrüstung',
  },
  planned: {
    sentence: 'Wählen Sie, was zu messen ist. Der Plan ordnet es so, dass das Stativ am seltensten umzieht und am wenigsten zu wechseln ist.',
    drawn: STATIONS,
  },
  kit: {
    sentence: 'Hier stehen Ihre Gehäuse und Objektive, damit jeder Wert bei dem bleibt, wozu er gehört.',
    drawn: 'Zeichnung: ein Kameragehäuse und ein passendes Objektiv.',
    begin: 'Gehäuse hinzufügen',
  },
  photographs: {
    sentence: 'Fotografieren Sie die gedruckte Testtafel mit Autofokus bei größter Blende, ohne Schärfen, und holen Sie die Bilder hier herein.',
    drawn: 'Zeichnung: ein Bild der Tafel und der Rampe, mit einer Linie, wo die Schärfe lag.',
  },
  files: {
    sentence: 'Sichern Sie hier Ausrüstung und Logbuch in einer Datei und holen Sie sie aus einer zurück.',
    drawn: 'Zeichnung: eine Datei und das Logbuch, mit einem Pfeil in jeder Richtung.',
  },
};

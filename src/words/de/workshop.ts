// German: the page for a workshop.
import type { WorkshopWords } from '../workshopWords.ts';
import { shown } from './proved.ts';
import { pair, within } from './subject.ts';
import { LIGHT } from './verdict.ts';
import { write } from './write.ts';

const HOLDS = { one: '# Probe', other: '# Proben' };

export const words: WorkshopWords = {
  title: 'Für die Werkstatt',
  gone: 'Dieser Durchlauf ist nicht im Logbuch. Schließen Sie diese Seite und öffnen Sie sie vom Ergebnis aus neu.',
  practice: 'An der Übungskamera gemessen, nicht an einem echten Gehäuse oder Objektiv.',
  pair,
  how: {
    title: 'Wie gemessen wurde',
    focused: (holdTime) =>
      'Das Objektiv wurde im vergrößerten Livebild bei größter Blende auf eine Tafel parallel zum Sensor scharfgestellt und so belassen. Dann wurde eine ' +
      'Korrektur nach der anderen eingestellt und jedes Mal bei halb gedrücktem Auslöser ' +
      `${write.count(holdTime, { one: '#\u00a0Sekunde', other: '#\u00a0Sekunden' })} lang das Fokuslicht beobachtet.`,
    counts: 'Ein Wert liegt im Band, wenn das Licht sofort anging und anblieb. Die Werte im Band hängen zusammen. Die Korrektur ist ihre Mitte.',
    aside:
      'Das Band reicht über den Korrektur\u00adbereich hinaus. Deshalb wurde seine Breite noch einmal mit leicht verstelltem Fokus gemessen. Scharfgestellt liegt die Mitte eine ' +
      'halbe Breite vom dort gesehenen Ende. Das Intervall berücksichtigt das Schwanken des Lichts an den Enden.',
    decides: 'Die Proben sind, was der Besitzer im Sucher gesehen hat. Es entscheidet die Messung der Werkstatt.',
  },
  holds: {
    title: 'Jede Probe, der Reihe nach',
    inFocus: (count) => `Scharfgestellt, ${write.count(count, HOLDS)}`,
    aside: (count) => `Mit verstelltem Fokus, ${write.count(count, HOLDS)}`,
  },
  photographs: { title: 'Was Aufnahmen zeigten', ...shown },
  bench: 'Messplatz',
  facts: {
    body: 'Gehäuse',
    lens: 'Objektiv',
    focalLength: 'Brennweite',
    distance: 'Entfernung',
    range: 'Korrekturen',
    measured: 'Gemessen',
  },
  named: (name, serial) => (serial === null ? name : `${name}, ${serial}`),
  length: write.millimetres,
  distance: (length) => write.distance(length),
  range: within,
  day: write.day,
  sense: 'Eine höhere Korrektur verlegt die Schärfe von der Kamera weg.',
  table: { hold: 'Nr.', value: 'Wert', light: 'Licht', arrows: 'Pfeile', counts: 'Zählt als' },
  number: (hold) => write.number(hold),
  light: { ...LIGHT, late: 'verzö\u00adgert', flicker: 'fla\u00adckernd' },
  arrows: { none: '', left: 'links', right: 'rechts', balanced: 'beide gleich', lopsided: 'ungleich' },
  counts: { in: 'im Band', out: 'außer\u00adhalb' },
};

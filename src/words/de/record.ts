// German: one sweep of the logbook.
import type { Light } from '../../sweep/verdict.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { RecordWords } from '../recordWords.ts';
import { place } from './subject.ts';
import { ARROWS_SEEN } from './verdict.ts';
import { write } from './write.ts';

const LIGHT: Readonly<Record<Light, string>> = {
  steady: 'das Licht war stabil',
  late: 'das Licht kam verzögert',
  flicker: 'das Licht flackerte',
  dark: 'das Licht blieb dunkel',
  untold: 'das Licht hielt nicht',
};

const COUNTS = { in: 'Das spricht für den Wert.', out: 'Das spricht gegen den Wert.' } as const;

const between = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? `bei ${write.signed(from, 1)}` : `zwischen ${write.signed(from, 1)} und ${write.signed(to, 1)}`;

export const words: RecordWords = {
  title: 'Logbuch',
  gone: 'Diese Messung ist nicht mehr im Logbuch.',
  details: (subject, finished) => line([place(subject), subject.body, write.day(finished)]),
  bench: 'Messplatz',
  conditions: {
    open: (noted) => (noted ? 'Helligkeit, Temperatur oder Notiz ändern' : 'Helligkeit, Temperatur und mehr notieren'),
    form: 'Wie es war',
    save: 'Beim Durchlauf speichern',
    saved: 'Gespeichert.',
  },
  replay: {
    open: 'Probe für Probe ansehen',
    title: 'Wiedergabe',
    at: (step, last) => `Wiedergabe: ${write.number(step)} von ${write.number(last)}`,
    earlier: 'Früher',
    later: 'Später',
    play: 'Abspielen',
    halt: 'Pause',
    sure: (interval) => `Die Mitte liegt mit ${write.percent(0.95)} Sicherheit ${between(interval)}.`,
    narrowing: (first, last) => `Wie sich die Mitte eingegrenzt hat: vor der ersten Probe lag sie ${between(first)}, am Ende ${between(last)}.`,
    opened: 'Vor der ersten Probe.',
    held: ({ number, value, light, arrows, counts }) => {
      const beside = ARROWS_SEEN[arrows];
      const seen = beside === null ? LIGHT[light] : `${LIGHT[light]}, ${beside}`;
      const hold = `Probe ${write.number(number)} bei ${writeSteps(value)}: ${seen}.`;
      return light === 'untold' ? hold : `${hold} ${COUNTS[counts]}`;
    },
    takenBack: (left) => `Zurückgenommen. ${write.count(left, { one: 'Es bleibt # Probe.', other: 'Es bleiben # Proben.' })}`,
    begunAfresh: 'Der Fokus hatte sich verschoben, deshalb begann der Durchlauf von vorn.',
    ended: 'Das Ende des Durchlaufs.',
    checking: 'Die Proben widersprachen sich, deshalb war der Fokus zu prüfen.',
    turning: 'Der Ring war zu drehen.',
    offered: 'Der Durchlauf bot ein Ergebnis an.',
    next: (value, why) => `Als Nächstes kam ${writeSteps(value)}: ${why}.`,
  },
};

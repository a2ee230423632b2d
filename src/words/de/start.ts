// German: the start and the next lens.
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { StartWords } from '../startWords.ts';
import { write } from './write.ts';

const HOW = { measured: 'gemessen', entered: 'eingestellt' } as const;

export const words: StartWords = {
  found: {
    label: 'Im Logbuch',
    none: 'kein Wert',
    more: (count) => write.count(count, { one: '# weiteres im Logbuch', other: '# weitere im Logbuch' }),
  },
  startWith: (lens) => `Start: ${lens}`,
  startNew: (lens) => `Neues Objektiv „${lens}“: Start`,
  unfit: 'Eine Angabe passt noch nicht. Ändern Sie sie oder drücken Sie in ihrem Feld die Esc-Taste.',
  noName: 'Ein Name ist nicht nötig. Alles Übrige lässt sich jederzeit nachtragen.',
  last: {
    label: 'Letztes Objektiv',
    picked: 'Nachgeschlagen',
    notMeasured: 'noch nicht gemessen',
    noValue: (at) => `kein Wert gefunden, ${write.day(at)}`,
    value: (value, how, at) => line([`zuletzt ${writeSteps(value)}, ${HOW[how]} am ${write.day(at)}`, 'der Durchlauf beginnt in seiner Nähe']),
  },
  nextLens: 'Nächstes Objektiv',
  bench: 'Messplatz aufbauen',
  byHand: 'Stattdessen einen Wert von Hand eintragen',
  photographs: 'Mit Aufnahmen prüfen',
  practice: { open: 'Übungskamera', note: 'Hier zuerst Licht und Wörter üben.' },
  unnamed: {
    label: 'Benennen',
    waits: (lens, value) => `${lens} (${value === null ? 'kein Wert' : writeSteps(value)}) hat noch keinen Namen.`,
    others: (count) => write.count(count, { one: 'Ein weiteres wartet auf seinen Namen.', other: '# weitere warten auf ihren Namen.' }),
  },
  unfinished: {
    here: 'Offener Durchlauf',
    elsewhere: 'Durchlauf in anderem Fenster',
    about: (lens, details) => `${lens}, ${details}.`,
    sofar: (holds) => `${write.count(holds, { one: '# Probe', other: '# Proben' })} bisher. Es ist nichts verloren.`,
    goOn: 'Weitermachen',
    follow: 'Zuschauen',
    end: 'Jetzt beenden',
  },
  next: {
    title: 'Nächstes Objektiv',
    field: 'Name des nächsten Objektivs',
    placeholder: 'Name des Objektivs',
    hint: 'Mit Brennweite, zum Beispiel „Corvid 85“. Die Eingabetaste startet.',
    planned: 'Als Nächstes im Plan',
    plan: 'Plan ansehen',
  },
};

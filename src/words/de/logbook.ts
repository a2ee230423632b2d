// German: the logbook's list.
import type { DueReason } from '../../logbook/due.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { LogbookWords } from '../logbookWords.ts';
import { focusFell } from './focusFell.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const DAYS_IN_A_MONTH = 30.44;

const RECORDS = { one: '# Messung', other: '# Messungen' };

const since = (happened: string, note: string): string =>
  note === '' ? `${happened} seit der Messung.` : `${happened} seit der Messung: ${note.replace(/\.$/, '')}.`;

function due(reason: DueReason): string {
  switch (reason.why) {
    case 'age':
      return reason.days < 60
        ? write.count(reason.days, { one: 'Zuletzt vor # Tag gemessen.', other: 'Zuletzt vor # Tagen gemessen.' })
        : write.count(Math.floor(reason.days / DAYS_IN_A_MONTH), { one: 'Zuletzt vor # Monat gemessen.', other: 'Zuletzt vor # Monaten gemessen.' });
    case 'firmware':
      return since('Neue Firmware', reason.note);
    case 'service':
      return since('Wartung', reason.note);
    case 'temperature':
      return `Bei ${write.unit(reason.before, 'celsius')} gemessen, jetzt sind es ${write.unit(reason.now, 'celsius')}.`;
    case 're-check':
      return `In der letzten Nachprüfung war das Licht bei ${writeSteps(reason.value)}, dem eingestellten Wert, nicht stabil.`;
    case 'drift':
      return write.count(
        reason.apart,
        {
          one: 'Die letzten zwei Messungen liegen # Stufe auseinander.',
          other: 'Die letzten zwei Messungen liegen # Stufen auseinander.',
        },
        1,
      );
    case 'photographs':
      return `Aufnahmen zeigten eine Abweichung: Bei ${writeSteps(reason.value)} lag die Schärfe ${focusFell(reason.bias)}.`;
  }
}

export const words: LogbookWords = {
  title: 'Logbuch',
  find: { label: 'Gehäuse, Objektiv, Brennweite oder Entfernung suchen', short: 'Objektiv suchen', found: 'Gefunden', aloud: 'Vorlesen' },
  found: (count) => `${write.number(count)} gefunden`,
  files: 'Sicherung und Tabellen',
  practised: (count) => `Übungs\u00addurchläufe (${write.number(count)})`,
  filter: {
    open: (on) => (on ? 'Filter: an' : 'Filter'),
    body: 'Gehäuse',
    everyBody: 'Alle Gehäuse',
    show: 'Zeigen',
    is: {
      all: 'In Gebrauch',
      'due again': 'Wieder fällig',
      'never measured': 'Nie gemessen',
      'not entered': 'Gemessen, nicht eingestellt',
      retired: 'Ausgemustert',
    },
    temperature: { label: 'Temperatur jetzt, °C', hint: 'Bei ganz anderer Temperatur gemessene Werte sind dann wieder fällig.' },
  },
  nothing: {
    of: {
      all: 'Im Logbuch ist nichts in Gebrauch.',
      'due again': 'Nichts ist wieder fällig.',
      'never measured': 'Alles ist gemessen.',
      'not entered': 'Alles Gemessene ist eingestellt.',
      retired: 'Nichts ist ausgemustert.',
    },
    like: (typed) => `Im Logbuch passt nichts zu „${typed}“. Versuchen Sie weniger Buchstaben.`,
  },
  backUp: (reminder) =>
    reminder.is === 'none yet'
      ? `Von ${write.count(reminder.unsaved, RECORDS)} gibt es noch keine Sicherung. Schreiben Sie jetzt eine.`
      : `Die neueste Sicherung ist ${write.count(reminder.days, { one: '# Tag', other: '# Tage' })} alt, ihr ${write.count(reminder.unsaved, { one: 'fehlt # Messung', other: 'fehlen # Messungen' })}. Schreiben Sie jetzt eine neue.`,
  noValue: 'kein Wert',
  more: (count) => `Weitere von ${write.number(count)} zeigen`,
  details: (subject) => line([place(subject), subject.body]),
  standing: ({ state, at, value, measured }) => {
    if (state === 'never measured' || at === null) return 'nie gemessen';
    if (measured?.service) return `muss in die Werkstatt, gemessen ${write.day(measured.at)}`;
    if (value === null) return `kein Wert gefunden, ${write.day(at)}`;
    switch (state) {
      case 'measured':
        return `gemessen ${write.day(at)}, noch nicht eingestellt`;
      case 'entered':
        return `eingestellt ${write.day(at)}`;
      case 'differ':
        return `eingestellt ${write.day(at)}, aber ${writeSteps(measured?.chosen ?? value)} gemessen`;
    }
  },
  due,
  dueAgain: (reason) => `Wieder fällig: ${due(reason)}`,
  result: (outcome) => {
    switch (outcome.found) {
      case 'band':
        return writeSteps(outcome.chosen);
      case 'carried over':
        return outcome.service ? (outcome.side === 'high' ? 'über dem Bereich' : 'unter dem Bereich') : writeSteps(outcome.chosen);
      case 'past the limit':
        return 'jenseits der Grenze';
      case 'beyond the scale':
        return outcome.side === 'above' ? 'über dem Bereich' : 'unter dem Bereich';
      case 'nothing':
        return 'kein Band';
    }
  },
  day: write.day,
};

// German: what stands before the catalogue can be read.
import type { FirstWords } from '../firstWords.ts';

export const words: FirstWords = {
  name: 'Sweepbook',
  places: 'Mehr',
  place: { logbook: 'Logbuch', plan: 'Plan', kit: 'Ausrüstung', settings: 'Einstellungen', help: 'Hilfe' },
  field: 'Objektiv nachschlagen oder ein neues nennen',
  placeholder: 'Objektiv, bekannt oder neu',
  start: 'Start',
  back: 'Zurück',
  dismiss: 'Schließen',
  announcement: 'Mitteilung',
  opening: 'Öffnet …',
  unread: 'Ein Teil der Seitenleiste ist nicht lesbar. Schließen Sie sie und öffnen Sie sie neu. Es geht nichts verloren.',
  notRead: 'Das Gespeicherte wurde noch nicht gelesen, deshalb lässt sich nichts speichern. Schließen Sie diese Seitenleiste und öffnen Sie sie neu.',
  mark: { word: 'Sprache aus', press: 'Sprache aus: einschalten' },
};

// German: what Sweepbook is, and what is new in it.
import type { AboutWords } from '../aboutWords.ts';

export const words: AboutWords = {
  title: 'Über Sweepbook',
  version: (version) => `Version ${version}`,
  updated: (version) => `Sweepbook ist jetzt ${version}: Neues`,
  news: {
    title: 'Neues',
    of: [
      {
        version: '0.1.0',
        lines: [
          'Die erste Version: Durchläufe per Sprache, Taste oder Taster und ein Logbuch aller Objektive.',
          'Aufnahmen prüfen einen Wert. Eine Übungskamera zeigt, was das Licht alles tun kann.',
        ],
      },
    ],
  },
  privacy: {
    title: 'Datenschutz',
    sentences: [
      'Was Sie eintragen und messen, bleibt in diesem Browser auf diesem Computer.',
      'Sweepbook verschickt von sich aus nichts und liest keine der Seiten, die Sie besuchen.',
      'Zwei Dinge verlassen ihn nur, wenn Sie es einschalten: die letzten Werte über Ihr Browserkonto, und Ihre Stimme, wo die Sprach\u00aderkennung des Browsers sie an ihren Hersteller schickt.',
    ],
  },
  licences: { title: 'Lizenzen', about: 'Sweepbook enthält Teile von anderen. Deren Lizenzen liegen bei.', open: 'Lizenzen lesen' },
  fault: {
    title: 'Fehler melden',
    about:
      'Der Bericht enthält die Einstellungen, die Versionen, die Sprachen und wie viel gespeichert ist. Namen der Ausrüstung, Serien\u00adnummern und Notizen enthält er nicht.',
    give: 'Es wird nichts verschickt: Geben Sie die Datei der Person, die Ihnen hilft.',
    save: 'Fehlerbericht speichern',
  },
};

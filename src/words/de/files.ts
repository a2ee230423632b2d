// German: backups, tables, and the copies that the browser keeps.
import type { FilesWords } from '../filesWords.ts';
import { brings, item, setAside } from './restoring.ts';
import { columnSaid, lineFault } from './tableFaults.ts';
import { write } from './write.ts';

const UNCHANGED = 'Noch ist nichts geändert.';

export const words: FilesWords = {
  title: 'Sicherung und Tabellen',
  drop: 'Auswählen oder hier ablegen.',
  unread: 'Diese Datei ist nicht lesbar. Prüfen Sie, ob es sie noch gibt, und wählen Sie sie neu.',
  howFar: {
    writing: (share) => `Die Sicherung wird geschrieben: ${write.percent(share)}.`,
    reading: (share) => `Die Datei wird gelesen: ${write.percent(share)}.`,
    comparing: (share) => `Sie wird mit dem Bestand verglichen: ${write.percent(share)}.`,
    bringing: (share) => `Sie wird eingespielt: ${write.percent(share)}.`,
  },
  backup: {
    title: 'Sicherung',
    about: 'Sie enthält die Ausrüstung, das Logbuch und die angelernten Wörter, nicht aber die kleinen Ausschnitte von Aufnahmen.',
    newest: (made) => (made === null ? 'Von hier wurde noch keine Sicherung geschrieben.' : `Die neueste Sicherung ist vom ${write.day(made)}.`),
    write: 'Sicherung schreiben',
    withoutWords: 'Die Sicherung ist geschrieben, aber ohne die angelernten Wörter. Sie sind gerade nicht lesbar.',
  },
  reminder: {
    label: 'Sicherung',
    unsaved: (count) => write.count(count, { one: '# Messung ist in keiner Sicherung.', other: '# Messungen sind in keiner Sicherung.' }),
    uninstall: 'Wird Sweepbook entfernt, ist das Logbuch gelöscht.',
    notNow: 'Nicht jetzt',
  },
  restore: {
    choose: 'Sicherung einspielen',
    fault: {
      'too large': 'Diese Datei ist zu groß für eine Sicherung. Wählen Sie eine, die Sweepbook geschrieben hat.',
      'no backup': 'Das ist keine Sicherung. Wählen Sie eine Datei, die Sweepbook geschrieben hat.',
      damaged: 'Diese Datei ist abgebrochen oder beschädigt. Wählen Sie eine andere Sicherung.',
      'no logbook': 'Diese Datei enthält kein Logbuch. Wählen Sie eine, die Sweepbook geschrieben hat.',
      'no version': 'Dem Logbuch in dieser Datei fehlt die Versionsangabe. Wählen Sie eine Datei, die Sweepbook geschrieben hat.',
      newer: 'Diese Sicherung hat ein neueres Sweepbook geschrieben. Aktualisieren Sie zuerst dieses.',
    },
    plan: (made, plan) => [`Geschrieben am ${write.day(made)}.`, ...brings(plan), UNCHANGED],
    taught: (count) =>
      `Sie enthält auch ${write.count(count, { one: '# ange\u00adlerntes Wort', other: '# angelernte Wörter' })}. Beim Zusammenführen bleibt ein Wort, das auch hier angelernt ist, wie es ist.`,
    conflict:
      'Beim Zusammenführen bleiben von wider\u00adsprüchlichen Messungen beide erhalten. Bei wider\u00adsprüchlicher Ausrüstung zählt die spätere Änderung.',
    each: 'Jeder Eintrag',
    item,
    more: (count) => write.count(count, { one: 'und noch # Eintrag', other: 'und noch # Einträge' }),
    aside: setAside,
    join: 'Mit dem Bestand zusammen\u00adführen',
    replace: 'Alles hier ersetzen',
    leave: 'Alles lassen, wie es ist',
    done: 'Fertig. Unten liegt eine Kopie des vorherigen Stands.',
    withoutWords: (why) => `Das Logbuch ist eingespielt. ${why}`,
  },
  table: {
    title: 'Tabelle',
    about:
      'Jede Messung, jeder eingestellte Wert und jede Prüfung mit Aufnahmen in einer Zeile, für eine Tabellenkalkulation. Die Proben stehen nur in der Sicherung.',
    write: 'Tabelle schreiben',
    choose: 'Tabelle einlesen',
    fault: (fault) => {
      switch (fault.is) {
        case 'open quote':
          return `Zeile ${write.number(fault.line)}: Ein Anführungszeichen ist nicht geschlossen. Schließen Sie es und wählen Sie die Datei neu.`;
        case 'stray quote':
          return `Zeile ${write.number(fault.line)}: Mitten in einem Feld steht ein Anführungszeichen. Entfernen Sie es und wählen Sie die Datei neu.`;
        case 'empty':
          return 'Diese Tabelle ist leer. Sie braucht eine Kopfzeile und eine Zeile für jeden Wert.';
        case 'too many lines':
          return `Diese Tabelle hat mehr als ${write.number(fault.most)} Zeilen. Teilen Sie sie in kleinere.`;
      }
    },
    meanings: 'Was jede Spalte bedeutet',
    passedOver: 'nicht benutzt',
    column: (number) => `Spalte ${write.number(number)}`,
    meaning: ({ key, heading }) => columnSaid(key, heading),
    missing: (meanings) => `Wählen Sie noch eine Spalte für: ${write.list(meanings)}.`,
    plan: ({ added, same, withoutValue, faults, newKit }) => [
      `${write.list([`${write.number(added)} neu`, `${write.number(same)} schon hier`, `${write.number(withoutValue)} ohne Wert`, `${write.number(faults.length)} fehlerhaft`])}.`,
      ...(newKit.length === 0 ? [] : [`Neu in der Ausrüstung: ${write.list(newKit)}.`]),
      UNCHANGED,
    ],
    line: lineFault,
    more: (count) => write.count(count, { one: 'und noch # fehlerhafte Zeile', other: 'und noch # fehlerhafte Zeilen' }),
    bring: 'Einlesen, was passt',
    done: 'Die Tabelle ist im Logbuch.',
  },
  copies: {
    title: 'Kopien in diesem Browser',
    none: 'Noch gibt es keine.',
    unread: 'Die täglichen Kopien sind nicht lesbar. Das Gespeicherte ist nicht betroffen.',
    bringBack: (at) => `Stand vom ${write.dayAndSecond(at)} zurückholen`,
    done: 'Alles ist, wie es damals war.',
  },
};

// German: what the session itself has to say.
import { writeSteps } from '../../sweep/scale.ts';
import type { SessionWords } from '../sessionWords.ts';
import { pair, within } from './subject.ts';
import { write } from './write.ts';

export const words: SessionWords = {
  stored: {
    reading: (share) => `Das Logbuch wird gelesen: ${write.percent(share)}.`,
    readAgain: 'Neu lesen',
    tooNew: 'Was hier gespeichert ist, hat ein neueres Sweepbook geschrieben. Aktualisieren Sie dieses. Bis dahin wird nichts geändert.',
    spoilt: (key, field, place) =>
      `Etwas, das unter „${key}“ gespeichert ist, lässt sich nicht verwenden${field === null ? '' : `, wegen „${field}“ darin`}. ` +
      `Es liegt vollständig unter „${place}“, alles Übrige wird ohne es benutzt.`,
    unread: 'Das Gespeicherte ist gerade nicht lesbar. Versuchen Sie es noch einmal.',
    notOnDisk: 'Es ist hier zu sehen, aber noch nicht auf der Festplatte. Lassen Sie diese Seitenleiste offen. Sie versucht es weiter, bis es gelingt.',
  },
  copies: {
    fault: {
      'copies unread': 'Die täglichen Kopien sind nicht lesbar. Das Gespeicherte ist nicht betroffen.',
      'copy unread': 'Diese Kopie ist nicht lesbar. Wählen Sie eine andere.',
      'copy not kept': 'Die tägliche Kopie findet keinen Platz. Schaffen Sie Platz auf der Festplatte. Der nächste Start versucht es wieder.',
    },
    offered: (at) => `Hier ist nichts mehr gespeichert, aber es gibt eine Kopie von allem vom ${write.dayAndTime(at)}.`,
    bringBack: 'Zurückholen',
  },
  bringing: {
    brokenOff: 'Das Einspielen eines Logbuchs wurde unterbrochen, deshalb ist alles wie zuvor. Spielen Sie es noch einmal ein.',
    notCopied:
      'Was hier ist, ließ sich nicht vorher kopieren, deshalb wurde nichts eingespielt. Schaffen Sie Platz auf der Festplatte und versuchen Sie es noch einmal.',
    tooNew: 'Diese Kopie stammt von einem neueren Sweepbook. Aktualisieren Sie dieses und versuchen Sie es noch einmal.',
  },
  sync: {
    fault: {
      'no sync':
        'Der Abgleich des Browsers ist gestört, die letzten Werte erreichen Ihre anderen Computer nicht. Hier ist alles gespeichert, und die Seitenleiste versucht es weiter, solange sie offen ist.',
    },
    unread: 'Einige Werte eines anderen Computers sind hier nicht lesbar. Aktualisieren Sie Sweepbook auf beiden.',
    noRoom: 'Im Abgleich des Browsers ist kein Platz für die ältesten Werte. Sie bleiben hier, und eine Sicherung enthält sie auch.',
    notTakenOut: 'Die Werte dieses Computers ließen sich nicht aus dem Abgleich des Browsers nehmen.',
    tryAgain: 'Erneut versuchen',
    overtaken: ({ value, old, more, ...subject }) => {
      const others = more === 0 ? '' : ` ${write.count(more, { one: 'Das gilt für einen weiteren Wert.', other: 'Das gilt für # weitere Werte.' })}`;
      return (
        `Ein anderer Computer hat einen neueren Wert für ${pair(subject)}: ${writeSteps(value)} statt ${writeSteps(old)}.${others} ` +
        'Beide bleiben im Verlauf. Prüfen Sie, welchen Wert die Kamera hat.'
      );
    },
  },
  erasing: {
    elsewhere: 'In einem anderen Fenster läuft ein Durchlauf. Löschen Sie das Gehörte dort oder übernehmen Sie den Durchlauf.',
    copiesUnread: 'Das Gehörte ist gelöscht, aber die täglichen Kopien sind gerade nicht lesbar. Versuchen Sie es noch einmal.',
    copyLeft: 'Das Gehörte ist gelöscht, nur in einer der täglichen Kopien noch nicht. Versuchen Sie es noch einmal.',
    notOnDisk: 'Auf dem Bildschirm ist es weg, auf der Festplatte noch nicht. Lassen Sie diese Seitenleiste offen. Sie versucht es weiter, bis es gelingt.',
  },
  proofs: {
    situationGone: 'Diese Situation ist nicht mehr in der Ausrüstung. Wählen Sie eine andere und behalten Sie die Werte dann.',
    unfit: 'Diese Zahlen lassen sich nicht behalten. Holen Sie die Bilder neu herein.',
    gone: 'Diese Prüfung mit Aufnahmen ist nicht mehr im Logbuch.',
    copiesUnread: 'Die Zahlen sind noch nicht gelöscht, weil die täglichen Kopien gerade nicht lesbar sind. Versuchen Sie es noch einmal.',
    copyLeft: 'Die Zahlen sind noch nicht gelöscht, weil sie in einer der täglichen Kopien stehen bleiben. Versuchen Sie es noch einmal.',
    crops: {
      'crops unread': 'Die Ausschnitte sind gerade nicht lesbar. Die Zahlen sind nicht betroffen.',
      'crops not kept': 'Die Zahlen sind gespeichert, für die Ausschnitte fehlt Platz. Schaffen Sie Platz auf der Festplatte.',
      'crops not erased': 'Die Ausschnitte lassen sich gerade nicht löschen. Versuchen Sie es noch einmal.',
    },
  },
  byHand: (fault) => {
    switch (fault.is) {
      case 'ends off the scale':
        return `Geben Sie beide Enden als Korrekturen an, ${within(fault.scale)}.`;
      case 'off the scale':
        return `Geben Sie eine Korrektur an, ${within(fault.scale)}.`;
      case 'outside the ends':
        return 'Wählen Sie einen Wert zwischen den beiden Enden.';
    }
  },
  recordGone: 'Diese Messung ist nicht mehr im Logbuch.',
  unexpected: (why) => `Etwas Unerwartetes ist schiefgegangen (${why}). Der Durchlauf geht weiter. Nichts Notiertes ist verloren.`,
  became: {
    'not here': 'nicht angenommen. Ein anderes Fenster führt diesen Durchlauf. Übernehmen Sie ihn, um ihn hier zu führen.',
    'asked back': 'nachgefragt',
    'said again': 'wiederholt',
    help: 'Hilfe',
    'looked up': 'nachgeschlagen',
    'not taken': 'nicht angenommen',
    'not clear': 'nicht verstanden',
    'too late': 'nicht angenommen, weil vor diesem Schritt begonnen',
  },
  farView: { on: 'an', off: 'aus' },
  missed: {
    'amid talk': 'nicht angenommen, weil mitten im Gespräch. Sagen Sie es noch einmal.',
    'beside the panel': 'nicht angenommen, weil die Seitenleiste gerade sprach. Sagen Sie es noch einmal.',
  },
  untold: {
    noScale: 'Geben Sie den Korrektur\u00adbereich mit drei ganzen Zahlen an: von, bis und Stufe.',
    noSweep: 'Dieser Durchlauf lässt sich hier nicht ändern. Führt ihn ein anderes Fenster, übernehmen Sie ihn zuerst.',
    holdFirst: 'Schließen Sie zuerst diese Probe ab, dann geben Sie es noch einmal an.',
    offTheScale: (value) =>
      `${writeSteps(value)} ist schon erprobt und liegt nicht in diesem Bereich. Nehmen Sie die Probe zurück oder wählen Sie einen Bereich, der den Wert enthält.`,
    arrowsSeen: 'Die bisherigen Proben enthalten Pfeile. Nehmen Sie diese Proben zuerst zurück oder behalten Sie die Pfeile.',
    kitGone: 'Das ist nicht mehr in der Ausrüstung. Wählen Sie etwas anderes.',
    resultGone: 'Dieses Ergebnis ist nicht mehr in der Ausrüstung. Schlagen Sie es im Logbuch nach.',
    missing: {
      body: 'Nennen Sie zuerst das Gehäuse.',
      lens: 'Nennen Sie zuerst das Objektiv.',
      length: 'Geben Sie auch die Brennweite an oder schreiben Sie sie in den Namen, zum Beispiel „Corvid 85“.',
    },
  },
  standIn: { body: 'Gehäuse ohne Namen', lens: (opened) => `Objektiv ohne Namen, ${write.dayAndTime(opened)}` },
  unplanned: {
    'kit gone': 'Gehäuse, Objektiv oder Entfernung sind nicht mehr in der Ausrüstung. Wählen Sie etwas anderes.',
    'value off the scale': 'Der Wert, auf dem das Gehäuse jetzt steht, liegt nicht in seinem Bereich. Geben Sie ihn noch einmal an.',
    'sweep not kept yet': 'Dieser Durchlauf ist noch nicht im Logbuch. Warten Sie einen Moment und versuchen Sie es noch einmal.',
    'no width': 'Dieser Durchlauf hat keine Breite, die sich übertragen lässt. Messen Sie die Situation neu.',
  },
  unbegun: {
    'under way': 'Ein Durchlauf läuft schon. Beenden oder verlassen Sie ihn zuerst.',
    'begun elsewhere': 'Ein anderes Fenster hat gerade einen Durchlauf begonnen. Beenden Sie ihn zuerst.',
  },
  practice: { body: 'Übungskamera', lens: 'Übungs\u00adobjektiv' },
};

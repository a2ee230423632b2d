// German: the help.
import type { HelpWords } from '../helpWords.ts';
import { correctionSaid, taught } from '../taught.ts';

export const words: HelpWords = {
  title: 'Hilfe',
  about:
    'Die Seitenleiste nennt einen Wert. Stellen Sie ihn an der Kamera ein, drücken Sie den Auslöser halb und beobachten Sie das Fokuslicht ' +
    'die ganze Probe lang. Sagen Sie, was Sie gesehen haben. Die Seitenleiste findet die Mitte der Werte, bei denen das Licht stabil ist.',
  now: {
    title: 'Was Sie jetzt tun können',
    start: 'Objektiv nennen und starten',
    practice: 'Übungskamera',
    bench: 'Messplatz aufbauen',
    goOn: 'Den Durchlauf fortsetzen',
    watch: 'Dem Durchlauf im anderen Fenster zuschauen',
  },
  lights: {
    title: 'Was das Licht bedeutet',
    light: 'Licht',
    counts: 'Zählt als',
    is: {
      steady: { seen: 'Sofort an, ohne Lücke', counts: 'im Band' },
      late: { seen: 'Kam verzögert', counts: 'knapp außerhalb' },
      flicker: { seen: 'Ging aus, auch nur einmal', counts: 'außerhalb' },
      dark: { seen: 'Ging nie an', counts: 'weit außerhalb' },
      untold: { seen: 'Hielt nicht', counts: 'außerhalb' },
    },
    note:
      'Ein kleines Dreieck neben einem Zeichen ist ein Pfeil im Sucher. Stabiles Licht mit nur einem Pfeil zählt als außerhalb. ' +
      'Als stabil zählt ein Licht erst, wenn die ganze Probe vorbei ist.',
  },
  spoken: {
    title: 'Wörter und Tasten',
    say: 'Sagen',
    means: 'Bedeutet',
    key: 'Taste',
    get set() {
      return `${taught('set')} ${correctionSaid(6)}`;
    },
    meanings: {
      solid: 'das Licht war stabil',
      delayed: 'es kam verzögert',
      flicker: 'es flackerte',
      nothing: 'es blieb dunkel',
      left: 'Pfeil links',
      right: 'Pfeil rechts',
      balanced: 'beide Pfeile gleich',
      lopsided: 'Pfeile ungleich',
      holding: 'beginnt die Probe',
      undo: 'nimmt das Letzte zurück',
      repeat: 'sagt es noch einmal',
      pause: 'der Durchlauf wartet',
      resume: 'der Durchlauf geht weiter',
      skip: 'lässt diesen Wert aus',
      accept: 'nimmt den Vorschlag an',
      'go on': 'macht vor dem Ende weitere Proben',
      set: 'wählt einen eigenen Wert',
      same: 'der Fokus ist unverändert',
      shifted: 'der Fokus hat sich verschoben',
      finish: 'beendet den Durchlauf sofort',
      help: 'sagt, was Sie sagen können',
      'far view': 'füllt die Seitenleiste oder zeigt wieder alles',
      entered: 'vermerkt den Wert als eingestellt',
      next: 'das nächste Objektiv, der nächste Schritt',
      back: 'einen Schritt zurück',
    },
    get together() {
      return `Licht und Pfeil lassen sich zusammen sagen: „${taught('flicker')} ${taught('left')}“.`;
    },
  },
  presses: {
    title: 'Nur ein Taster',
    about:
      'Die große Schaltfläche ist der Taster. Ebenso die Leertaste, die Eingabetaste, Bild auf und Bild ab sowie jedes Pedal und jeder Klicker, der eine davon sendet.',
    how: {
      short: 'einmal drücken',
      double: 'zweimal schnell drücken',
      long: 'länger als eine halbe Sekunde drücken',
      'kept, double': 'lang drücken, was eine Probe beginnt, dann zweimal schnell drücken',
    },
    when: {
      dialling: 'Beim Einstellen',
      holding: 'Während der Probe',
      judging: 'Nach dem Endton',
      offered: 'Wenn die Seitenleiste ein Ergebnis anbietet',
      paused: 'In der Pause',
      checking: 'Bei der Frage nach dem Fokus',
      turning: 'Wenn der Ring zu drehen ist',
      finished: 'Beim Ergebnis',
    },
  },
  before: {
    title: 'Bevor Sie beginnen',
    steps: [
      'Stellen Sie die Tafel parallel zum Sensor auf, gleichmäßig beleuchtet.',
      'Stellen Sie im Livebild bei größter Blende genau scharf. Dann schalten Sie das Objektiv auf manuell und lassen den Ring in Ruhe.',
      'Fokussiert das Gehäuse mit einer Taste auf der Rückseite, halten Sie diese statt des Auslösers.',
    ],
    manual: 'Wo das Handbuch Ihres Kameraherstellers davon abweicht, gilt das Handbuch.',
  },
};

// German: a person's first holds.
import type { FirstHoldWords } from '../firstHoldWords.ts';

export const words: FirstHoldWords = {
  keys: {
    elsewhere: 'Die Tasten gehen an die Webseite: Klicken Sie in die Seitenleiste.',
    holdAtStake: 'Die Zeit ist um, aber die Tasten gehen an die Webseite: Klicken Sie in die Seitenleiste.',
    back: 'Die Tasten erreichen die Seitenleiste wieder.',
  },
  asked: {
    short: 'Hat es schon geflackert? Wenn ja, noch einmal drücken. Wenn nicht, weiter halten.',
    double: 'Kam es schon verzögert? Wenn ja, noch zweimal drücken. Wenn nicht, weiter halten.',
    long: 'Ist es schon dunkel? Wenn ja, noch einmal lang drücken. Wenn nicht, weiter halten.',
    kept: (undoable) => `Zum Beginnen kurz antippen, dann nur den Auslöser der Kamera halten.${undoable ? ' Zweimal drücken nimmt zurück.' : ''}`,
  },
  keptDouble: 'lang drücken, dann zweimal drücken',
  coach: {
    label: 'So läuft eine Probe',
    camera: 'Auslöser der Kamera halb gedrückt halten: Das Fokuslicht geht an.',
    panel: 'Dieser Taster meldet nur: antippen zum Beginn und wenn es nicht hält.',
    lights: 'Achten Sie in der Probe auf eines davon:',
    firstAloud: 'Zum Beginnen den Taster antippen. Dann den Auslöser halb drücken und halten.',
    steps: {
      dialling: {
        now: 'Stellen Sie diesen Wert an der Kamera ein.',
        press: 'Dann den Taster antippen, den Auslöser halb drücken und halten.',
        aloud: 'Einstellen, Taster antippen, dann halb drücken und halten.',
      },
      holding: {
        now: 'Halten Sie den Auslöser halb gedrückt und beobachten Sie das Licht.',
        press: 'Hier nur drücken, wenn das Licht nicht hält:',
        aloud: null,
      },
      judging: {
        now: 'Die Zeit ist um: Lassen Sie den Auslöser los.',
        press: 'Blieb das Licht an, den Taster antippen. Hielt es nicht, den Taster einen Moment gedrückt halten.',
        aloud: 'Antippen, wenn das Licht anblieb. Lang drücken, wenn nicht.',
      },
    },
  },
  lights: {
    title: 'Was das Licht tun kann',
    open: 'Die vier Lichter',
    close: 'Die vier Lichter schließen',
    does: { steady: 'Sofort an und bleibt an.', late: 'Kommt verzögert.', flicker: 'Geht aus, auch nur einmal.', dark: 'Geht nie an.' },
    when: { steady: 'nach dem Ton', late: 'in der Probe', flicker: 'in der Probe', dark: 'in der Probe' },
    after: 'danach',
  },
  arrows: {
    title: 'Was die Pfeile tun können',
    does: { left: 'Links allein.', right: 'Rechts allein.', balanced: 'Beide gleich.', lopsided: 'Beide ungleich.' },
    counts: { in: 'stabiles Licht: im Band', out: 'auch stabiles Licht: außerhalb' },
  },
};

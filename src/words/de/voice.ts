// German: what the microphone mark and the voice sheet say, and what is said of a deaf ear.
import { voiceNamed } from '../named.ts';
import { taught } from '../taught.ts';
import type { VoiceWords } from '../voiceWords.ts';
import { words as first } from './first.ts';
import { write } from './write.ts';

export const words: VoiceWords = {
  mark: {
    off: first.mark.word,
    ready: 'Sprache an',
    begun: 'nicht fertig',
    asking: 'fragt',
    opening: 'öffnet',
    listening: 'hört zu',
    speaking: 'spricht',
    'opens when pressed': 'auf Druck',
  },
  markDeaf: {
    'no microphone': 'kein Mikro',
    'not asked': 'ohne Zugriff',
    blocked: 'gesperrt',
    'in use': 'Mikro belegt',
    muted: 'Mikro stumm',
    silent: 'kein Pegel',
    'no service': 'kein Dienst',
    'no network': 'kein Netz',
    'no recogniser': 'anlernen',
    'not on this computer': 'nicht bereit',
    'to be downloaded': 'zu laden',
    'being downloaded': 'lädt',
    'not usable': 'unbenutzbar',
    'no language': 'Sprache?',
    'no words': 'keine Wörter',
    'words unreadable': 'neu anlernen',
    'no sound': 'kein Ton',
    'held back': 'Taste nötig',
    'another window': 'anderswo',
    unread: 'neu öffnen',
  },
  markSilent: { mute: 'ohne Stimme', off: 'Ton aus' },
  marked: (shown, press) => `${shown.join(' ')}: ${press}`,
  means: {
    off: 'Die Spracheingabe ist aus.',
    ready: 'Die Spracheingabe ist an: Zugehört wird, solange ein Durchlauf läuft.',
    begun: 'Die Spracheingabe ist aus, bis sie eingerichtet ist.',
    asking: 'Der Browser fragt, ob das Mikrofon benutzt werden darf.',
    opening: 'Das Mikrofon wird geöffnet.',
    listening: 'Die Seitenleiste hört zu.',
    speaking: 'Die Seitenleiste spricht und hört solange nicht zu.',
    'opens when pressed': 'Die Seitenleiste hört zu, wenn Sie den Taster drücken.',
  },
  deaf: {
    'no microphone': 'Es meldet sich kein Mikrofon. Schließen Sie eines an. Das Zuhören beginnt dann von selbst.',
    'not asked': 'Der Browser hat das Mikrofon noch nicht erlaubt. Erlauben Sie es. Das Zuhören beginnt dann von selbst.',
    blocked: 'Das Mikrofon ist für Sweepbook gesperrt. Die Mikrofonseite zeigt, wie Sie es wieder erlauben.',
    'in use': 'Das Mikrofon lässt sich nicht öffnen, weil ein anderes Programm es belegt. Schließen Sie dieses. Das Zuhören beginnt dann von selbst.',
    muted: 'Das Mikrofon ist stummgeschaltet. Heben Sie das am Mikrofon oder in den Toneinstellungen des Systems auf.',
    silent: 'Vom Mikrofon kommt gar nichts. Schalten Sie es ein oder wählen Sie im Browser oder im System ein anderes. Das Zuhören beginnt dann von selbst.',
    'no service':
      'Die Sprach\u00aderkennung des Browsers antwortet nicht. Prüfen Sie das Netz oder lernen Sie eigene Wörter an. Die Seitenleiste versucht es von selbst weiter.',
    'no network':
      'Die Sprach\u00aderkennung des Browsers braucht das Netz, und es fehlt. Mit Tasten geht es weiter. Ist das Netz wieder da, beginnt das Zuhören von selbst.',
    'no recogniser': 'Dieser Browser hat keine eigene Sprach\u00aderkennung. Lernen Sie stattdessen eigene Wörter an.',
    'not on this computer':
      'Der Browser hat auf diesem Computer keine Sprach\u00aderkennung bereit. Lernen Sie eigene Wörter an oder wählen Sie die Sprach\u00aderkennung des Browsers, die den Ton womöglich versendet.',
    'to be downloaded': 'Der Browser kann Wörter auf diesem Computer erkennen, sobald er das Nötige herunter\u00adgeladen hat.',
    'being downloaded': 'Der Browser lädt herunter, was er zum Erkennen auf diesem Computer braucht. Das Zuhören beginnt dann von selbst.',
    'not usable':
      'Der Browser erlaubt seine Sprach\u00aderkennung hier nicht. Erlauben Sie sie in den Einstellungen des Browsers oder lernen Sie eigene Wörter an.',
    get 'no language'() {
      return `Die Sprach\u00aderkennung des Browsers versteht hier kein ${voiceNamed('de')}. Lernen Sie stattdessen eigene Wörter an.`;
    },
    'no words': 'Es sind noch keine Wörter angelernt. Lernen Sie die sieben Wörter eines Durchlaufs an.',
    'words unreadable': 'Die angelernten Wörter sind nicht lesbar. Lernen Sie sie in der Hörprüfung neu an.',
    'no sound': 'Dieser Browser gibt keinen Ton vom Mikrofon weiter. Tasten, Pedal und Maus können alles.',
    'held back': 'Der Browser hält den Ton des Mikrofons zurück, bis Sie etwas tun. Drücken Sie eine Taste oder klicken Sie einmal.',
    'another window': 'Ein anderes Fenster hört zu. Schließen Sie es oder hören Sie stattdessen hier zu.',
    unread: 'Ein Teil der Seitenleiste ist nicht lesbar. Schließen Sie sie und öffnen Sie sie neu. Es geht nichts verloren.',
  },
  deafSaid: {
    'no microphone': 'Ich höre Sie nicht: kein Mikrofon.',
    'not asked': 'Ich höre Sie nicht: Das Mikrofon ist nicht erlaubt.',
    blocked: 'Ich höre Sie nicht: Das Mikrofon ist gesperrt.',
    'in use': 'Ich höre Sie nicht: Ein anderes Programm hat das Mikrofon.',
    muted: 'Ich höre Sie nicht: Das Mikrofon ist stummgeschaltet.',
    silent: 'Ich höre Sie nicht: Vom Mikrofon kommt nichts.',
    'no service': 'Ich höre Sie nicht: Die Sprach\u00aderkennung antwortet nicht.',
    'no network': 'Ich höre Sie nicht: kein Netz.',
    'no recogniser': 'Ich höre Sie nicht: Dieser Browser hat keine Sprach\u00aderkennung.',
    'not on this computer': 'Ich höre Sie nicht: Auf diesem Computer ist keine Sprach\u00aderkennung bereit.',
    'to be downloaded': 'Ich höre Sie nicht: Die Sprach\u00aderkennung ist nicht herunter\u00adgeladen.',
    'being downloaded': 'Ich höre Sie noch nicht: Die Sprach\u00aderkennung wird herunter\u00adgeladen.',
    'not usable': 'Ich höre Sie nicht: Die Sprach\u00aderkennung ist hier nicht erlaubt.',
    get 'no language'() {
      return `Ich höre Sie nicht: Die Sprach\u00aderkennung versteht kein ${voiceNamed('de')}.`;
    },
    'no words': 'Ich höre Sie nicht: Es sind keine Wörter angelernt.',
    'words unreadable': 'Ich höre Sie nicht: Die angelernten Wörter sind nicht lesbar.',
    'no sound': 'Ich höre Sie nicht: Der Browser gibt keinen Ton weiter.',
    'held back': 'Ich höre Sie erst, wenn Sie eine Taste drücken.',
    'another window': 'Ein anderes Fenster hört zu.',
    unread: 'Ich höre Sie nicht. Öffnen Sie die Seitenleiste neu.',
  },
  hearsAgain: 'Ich höre Sie wieder.',
  press: {
    sheet: 'Spracheingabe öffnen',
    allow: 'Mikrofon erlauben',
    page: 'Mikrofonseite öffnen',
    teach: 'Eigene Wörter anlernen',
    here: 'Hier zuhören',
  },
  goes: {
    browser:
      'Ihre Wörter erkennt die Sprach\u00aderkennung des Browsers, deren Hersteller den Ton womöglich an einen seiner Server senden lässt. ' +
      'Sweepbook selbst speichert und sendet keinen Ton.',
    here: 'Ihre Wörter erkennt der Browser auf diesem Computer. Kein Ton verlässt ihn, und keiner wird gespeichert.',
    own: 'Ihre Wörter werden auf diesem Computer mit den angelernten verglichen. Kein Ton verlässt ihn, und keiner wird gespeichert.',
  },
  sheet: {
    title: 'Sprach\u00adeingabe',
    get offered() {
      return `Sagen Sie „${taught('holding')}“, „${taught('solid')}“, „${taught('flicker')}“, statt Tasten zu drücken. Tasten, Pedal und Maus bleiben.`;
    },
    allow: 'Erlauben',
    allowAndTeach: 'Erlauben, dann sieben Wörter anlernen',
    download: 'Herunterladen',
    downloadInstead: 'Stattdessen den Browser seine Sprach\u00aderkennung herunterladen lassen: Kein Ton verlässt diesen Computer',
    downloading: 'Wird geladen',
    notDownloaded: 'Das Herunterladen ist misslungen. Prüfen Sie das Netz und den freien Platz und versuchen Sie es noch einmal.',
    teachInstead: 'Stattdessen sieben Wörter anlernen: Kein Ton verlässt diesen Computer',
    asking: 'Der Browser fragt, ob Sweepbook das Mikrofon benutzen darf. Antworten Sie dort mit „Zulassen“ oder „Erlauben“. Hier geht es von selbst weiter.',
    once: 'Wenn Sie es nur für dieses Mal erlauben, lassen Sie den Tab bei der Arbeit offen, denn die Erlaubnis endet mit ihm.',
    askAgain: 'Erneut fragen',
    refused: 'Das Mikrofon ist für Sweepbook gesperrt, die Spracheingabe bleibt aus. Sonst ändert sich nichts.',
    howToUnblock: 'Zeigen, wie man es erlaubt',
    leaveOff: 'Ausge\u00adschaltet lassen',
    on: 'Die Spracheingabe ist an.',
    get trial() {
      return `Probieren Sie es aus, wenn Sie mögen: Sagen Sie „${taught('solid')}“.`;
    },
    heard: (word: string) => `Gehört: „${word}“.`,
    get begin() {
      return `Beginnen Sie unten, dann sagen Sie „${taught('holding')}“.`;
    },
    get toSweep() {
      return `Zurück zum Durchlauf, dann „${taught('resume')}“ sagen`;
    },
    switchOff: 'Sprach\u00adeingabe ausschalten',
    checkHearing: 'Hörprüfung: Geräusche, Wörter anlernen',
    again: 'Erneut versuchen',
    teach: (learnt: number, of: number) =>
      `${write.number(learnt)} von ${write.number(of)} Wörtern sind angelernt. Jedes wird fünfmal gesagt, zusammen dauert das keine zwei Minuten. Hier geht es von selbst weiter.`,
    lesson: (said) => said.map((word) => `„${word}“`).join(', '),
    openLesson: 'Sieben Wörter anlernen',
  },
};

// German: the hearing check.
import type { HearingWords } from '../hearingWords.ts';
import { correctionSpelt, digitsSaid, taught, vocabulary } from '../taught.ts';
import { NO_MICROPHONE } from './microphone.ts';
import { capital } from '../run.ts';
import { write } from './write.ts';

/** What a question to the logbook begins with. */
const asking = (): string => vocabulary().question.openings[0] ?? '';

export const words: HearingWords = {
  title: 'Hörprüfung',
  stays: 'Der Ton wird nur auf diesem Computer verglichen, nie gespeichert oder gesendet.',
  kept:
    'Von einem Wort, das Sie anlernen, bleibt sein Muster, aus dem sich nichts abspielen lässt. Das Muster bleibt in diesem Browser und kommt in ' +
    'eine Sicherung, wenn Sie eine schreiben.',
  room: {
    title: 'Der Raum',
    level: 'Pegel',
    listen: 'Zuhören',
    toListen: 'Drücken Sie auf die Schaltfläche. Der Browser fragt dann, ob Sweepbook das Mikrofon benutzen darf.',
    refused: {
      ...NO_MICROPHONE,
      'not asked': 'Das Mikrofon ist noch nicht erlaubt. Drücken Sie auf die Schaltfläche und antworten Sie mit „Zulassen“ oder „Erlauben“.',
      blocked: 'Das Mikrofon ist für Sweepbook gesperrt. Erlauben Sie es über das Symbol neben der Adresse, dann drücken Sie noch einmal auf die Schaltfläche.',
    },
    stand: 'Stellen Sie sich dorthin, wo Sie arbeiten werden, und sagen Sie ein Wort.',
    noSound: 'Dieser Browser kann den Ton des Mikrofons nicht weitergeben, Wörter lassen sich hier deshalb nicht anlernen.',
    gone: 'Das Mikrofon fehlt. Schließen Sie es an, dann drücken Sie noch einmal auf die Schaltfläche.',
    muted: 'Das Mikrofon ist stummgeschaltet. Heben Sie das am Mikrofon oder in den Toneinstellungen des Systems auf.',
  },
  heard: {
    noWord: 'Etwas war zu hören, aber kein angelerntes Wort.',
    word: (word) => `Gehört: „${word}“.`,
    perhaps: (word) => `Vielleicht „${word}“. Die Seitenleiste würde nachfragen.`,
  },
  own: {
    title: 'Ihre Wörter',
    about: (takes) => [
      `Sie sagen jedes Wort ${write.count(takes, { one: 'einmal', other: '#\u2011mal' })}.`,
      'Für den Anfang genügen die sieben Wörter eines Durchlaufs. Was nicht angelernt ist, geht mit Tasten, Pedal oder Maus.',
    ],
    learns: 'Die Seitenleiste kann auch aus richtigen Wörtern lernen. Schalten Sie das in den Einstellungen unter „Spracheingabe“ ein.',
    group: (left, of) =>
      left === of
        ? write.count(of, { one: 'Dieses Wort anlernen', other: 'Diese # Wörter anlernen' })
        : write.count(left, { one: 'Das fehlende Wort anlernen', other: 'Die # fehlenden anlernen' }),
    teach: (word) => `„${word}“ anlernen`,
    again: (word) => `„${word}“ neu anlernen`,
    short: { teach: 'Anlernen', again: 'Neu' },
    is: {
      notTaught: 'nicht angelernt',
      taught: 'angelernt',
      learned: (more) => `angelernt, ${write.number(more)} dazugelernt`,
    },
    forgetLearned: 'Gelerntes löschen, Angelerntes behalten',
    learnedForgotten: 'Das Gelernte ist gelöscht. Was Sie angelernt haben, ist alles noch da.',
    erase: 'Alles Angelernte löschen',
    erased: 'Alles Angelernte ist gelöscht.',
    rooms: { sweep: 'Ein Durchlauf', walk: 'Geführter Aufbau', logbook: 'Das Logbuch', rest: 'Das Übrige' },
    of: (done, all) => (done === all ? `alle ${write.number(all)} angelernt` : `${write.number(done)} von ${write.number(all)} angelernt`),
    groups: {
      sweep: { name: 'Ein Durchlauf', for: 'Genug für einen ganzen Durchlauf, von der ersten Probe bis zum angenommenen Wert.' },
      walk: {
        name: 'Geführter Aufbau',
        get for() {
          return `Um den geführten Aufbau durchzugehen. „${capital(taught('repeat'))}“ sagt auch einen Wert noch einmal.`;
        },
      },
      arrows: { name: 'Pfeile', for: 'Für Gehäuse, die neben dem Fokuslicht Pfeile zeigen.' },
      values: {
        name: 'Werte und Logbuch',
        get for() {
          return `Einen eigenen Wert wählen, „${taught('set')} ${correctionSpelt(-12)}“, und das Logbuch fragen, „${asking()} ${digitsSaid(85)}“.`;
        },
      },
      rest: { name: 'Weitere Wörter', for: 'Pause, auslassen, weitermachen und was ein Durchlauf sonst fragt.' },
      lenses: {
        name: 'Ihre Objektive',
        get for() {
          return `Das Logbuch nach dem Namen eines Objektivs fragen: Sagen Sie „${asking()}“, dann den Namen.`;
        },
      },
    },
  },
  lesson: {
    say: (word) => `„${word}“ sagen`,
    takes: (done, of) => `${write.number(done)} von ${write.number(of)}`,
    begin: 'Sagen Sie es so, wie Sie es an der Kamera sagen, mit Stille davor und danach.',
    taught: (word) => `„${word}“ ist angelernt.`,
    allTaught: 'Alle Wörter sind angelernt. Gehen Sie zurück zur Seitenleiste. Weitere Wörter zum Anlernen stehen unten.',
    stop: 'Aufhören',
  },
};

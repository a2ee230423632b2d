// German: the trainer.
import { countedRight, namedRight, type TrainingHold, type TrainingLight } from '../../practice/training/round.ts';
import { RELIABLE, type Confusion } from '../../practice/training/score.ts';
import { taught } from '../taught.ts';
import type { TrainingWords } from '../trainingWords.ts';
import { write } from './write.ts';

type Slip = Exclude<keyof Confusion, 'right' | 'of'>;

const WAS: Readonly<Record<TrainingLight, string>> = {
  steady: 'Es war stabil.',
  late: 'Es kam verzögert.',
  flicker: 'Es flackerte.',
  dark: 'Es blieb dunkel.',
};

/** The costly ones first. */
const SLIPS: Readonly<Record<Slip, string>> = {
  lateAsSteady: 'Verzögert, als stabil beantwortet',
  flickerAsSteady: 'Flackernd, als stabil beantwortet',
  darkAsSteady: 'Dunkel, als stabil beantwortet',
  steadyAsFailing: 'Stabil, als nicht gehalten beantwortet',
  wrongKind: 'Nicht gehalten, mit anderer Art verwechselt',
};

/** Of two that come as often, the one that can be unlearned best. */
const WATCH_FOR: Readonly<Record<Slip, () => string>> = {
  lateAsSteady: () => 'Sehen Sie auf das Licht, bevor Sie drücken. Ein verzögertes Licht ist im ersten Moment dunkel.',
  flickerAsSteady: () => 'Lassen Sie das Auge am Licht, bis die Zeit um ist. Eine einzige kurze Lücke ist Flackern.',
  steadyAsFailing: () => 'Melden Sie nur dann einen Fehler, wenn Sie ihn gesehen haben. Ihr eigenes Blinzeln sieht wie eine Lücke aus.',
  wrongKind: () => `Erst dunkel, dann an: „${taught('delayed')}“. Erst an, dann eine Lücke: „${taught('flicker')}“. Nie an: „${taught('nothing')}“.`,
  darkAsSteady: () => `Für ein Licht, das nie anging, sagen Sie „${taught('nothing')}“.`,
};

const keysOf = (record: Readonly<Record<Slip, unknown>>): readonly Slip[] => Object.keys(record) as Slip[];

function counts(hold: TrainingHold): string {
  if (namedRight(hold)) return 'Richtig.';
  if (!countedRight(hold)) return 'Nein.';
  return hold.told === 'untold' ? 'Richtig, es hielt nicht.' : 'Richtig, es hielt nicht, aber auf andere Art.';
}

export const words: TrainingWords = {
  title: 'Auge schulen',
  about:
    'Zehn Proben von zwei Sekunden am Übungslicht. Antworten Sie wie in einem Durchlauf: mit Wort, Taste, Maus oder Taster. ' +
    'Nach zwei richtigen Antworten in Folge sind verzögerte und flackernde Lichter schwerer zu sehen, nach einer falschen leichter.',
  begin: 'Runde beginnen',
  another: 'Noch eine Runde',
  hold: {
    label: 'Trainingsprobe',
    title: (number, of) => `Probe ${write.number(number)} von ${write.number(of)}`,
    answers: 'Antworten, die jetzt gelten',
    ready: 'Drücken Sie, wenn Sie bereit sind.',
    watch: 'Auf das Licht achten.',
    over: 'Die Zeit ist um. Was haben Sie gesehen?',
    tooSoon: 'Noch nicht. Halten Sie, bis die Zeit um ist.',
    was: (hold) => `${counts(hold)} ${WAS[hold.shown]}`,
  },
  round: {
    label: 'Diese Runde',
    right: ({ right, of }) => `${write.number(right)} von ${write.number(of)} richtig`,
    slips: (confusion) =>
      keysOf(SLIPS)
        .filter((slip) => confusion[slip].missed > 0)
        .map((slip) => `${SLIPS[slip]}: ${write.number(confusion[slip].missed)} von ${write.number(confusion[slip].shown)}.`),
    watchFor(confusion) {
      const [worst] = keysOf(WATCH_FOR).toSorted((a, b) => confusion[b].missed - confusion[a].missed);
      return worst && confusion[worst].missed > 0 ? WATCH_FOR[worst]() : 'Kein Fehler in dieser Runde.';
    },
    level: (level, last) => `Schwierigkeit ${write.number(level)} von ${write.number(last)}.`,
  },
  standing: {
    title: 'Ihre Zuverlässig\u00adkeit',
    reliability: ({ right, of, low, high, reached }) => [
      `${write.number(right)} von ${write.number(of)} deutlichen Proben zählten richtig.`,
      `Mit ${write.percent(0.95)} Sicherheit zählen also ${write.percent(Math.floor(low * 100) / 100)} bis ${write.percent(Math.ceil(high * 100) / 100)} Ihrer Proben richtig.`,
      reached ? 'Das ist zuverlässig genug für einen Durchlauf.' : `Für einen Durchlauf muss die untere Zahl ${write.percent(RELIABLE)} erreichen.`,
    ],
    kept: (rounds, newest) => [
      `${write.count(rounds, { one: '# Runde ist', other: '# Runden sind' })} gespeichert, die neueste vom ${write.day(newest)}.`,
      'Die letzten acht zählen, davon nur deutlich sichtbare Lichter.',
    ],
    tooFew: (enough, sofar) =>
      `Nach ${write.count(enough, { one: '# deutlichen Probe', other: '# deutlichen Proben' })} kann ein Durchlauf Ihre eigenen Fehler berücksichtigen. Bisher ${write.count(sofar, { one: 'ist es #', other: 'sind es #' })}.`,
    own: {
      label: 'Meine Zuverlässig\u00adkeit benutzen',
      note: (lapse) =>
        `Ab dem nächsten Durchlauf wird mit ${write.percent(lapse, 1)} verdorbenen Proben gerechnet statt mit den üblichen ${write.percent(0.02)}.`,
    },
    forget: 'Meine Runden löschen',
    forgetNow: 'Löschen',
    keep: 'Behalten',
  },
};

// Own words on spoken digits: how many are heard right, how many taken wrongly, how often other sounds are taken for
// one, how soon it is decided, and what it costs.
import { learnedFrom } from './learned.ts';
import { spokenDigits } from './spokenDigits.ts';
import { afterSounds } from './afterSounds.ts';
import { echoing } from './echoing.ts';
import { besidePanel } from './besidePanel.ts';
import { latePrompts } from './latePrompts.ts';
import { trials } from './scenes.ts';
import { add, listened, nearestRight, percentOf, tried, type Counts } from './tried.ts';
import { least, most, shown, type Figure } from '../figure.ts';

const TIMES = 2;
const CLOSED = [
  [40, 97],
  [20, 96],
  [10, 93],
] as const;
const LEARNED = 'after a sweep that was learned from';

export function onSpokenDigits(data: string, tell: (sentence: string) => void): Figure[] | null {
  const speakers = spokenDigits(data);
  if (speakers === null) return null;
  const counts = new Map<string, Counts>();
  const talk = new Map<string, { taken: number; unsure: number; minutes: number }>();
  const nearest = new Map<string, number>();
  const late: number[] = [];
  const cost = { spent: 0, heard: 0 };
  const afterCost = { spent: 0, heard: 0 };

  const all = trials(speakers, TIMES);
  for (const trial of all) {
    tell(`${trial.speaker} teaches and is heard`);
    for (const [decibels] of CLOSED) {
      const said = trial.words(decibels);
      const heard = tried(trial.rate, trial.takes, said, cost);
      late.push(...heard.late);
      const closed = nearestRight(trial.rate, trial.takes, said);
      for (const key of [`${decibels}`, `${decibels} ${trial.speaker}`]) {
        add(counts, key, heard);
        nearest.set(key, (nearest.get(key) ?? 0) + closed);
      }
    }
    const learned = learnedFrom(trial, 20);
    const { late: _, ...after } = tried(trial.rate, learned, trial.words(20), afterCost);
    add(counts, LEARNED, after);
    const fewer = new Set(trial.fewer.map(({ word }) => word));
    const fewerLearned = learned.filter(({ word }) => fewer.has(word));
    const [ownTalk, othersTalk] = [trial.ownTalk(20), trial.othersTalk(20)];
    for (const [name, sound, takes] of [
      ['own talk', ownTalk, trial.fewer],
      ['talk of others', othersTalk, trial.fewer],
      ['clicks, beeps and drives', trial.handling(20), trial.fewer],
      [`own talk ${LEARNED}`, ownTalk, fewerLearned],
      [`talk of others ${LEARNED}`, othersTalk, fewerLearned],
    ] as const) {
      if (sound === null) continue;
      const { events, minutes } = listened(sound, trial.rate, takes);
      const sum = talk.get(name) ?? { taken: 0, unsure: 0, minutes: 0 };
      sum.taken += events.filter(({ heard }) => heard === 'word').length;
      sum.unsure += events.filter(({ heard }) => heard === 'unsure').length;
      sum.minutes += minutes;
      talk.set(name, sum);
    }
  }
  const percent = (key: string, what: 'right' | 'wrong' | 'unsure') => percentOf(counts, key, what);
  const closed = (key: string) => (100 * nearest.get(key)!) / counts.get(key)!.said;
  const aMinute = (name: string, what: 'taken' | 'unsure', figure: (value: number) => Figure): Figure[] => {
    const sum = talk.get(name);
    if (sum !== undefined) return [figure(sum[what] / sum.minutes)];
    tell(`not measured: ${name} (the data has no words for it)`);
    return [];
  };
  late.sort((a, b) => a - b);
  return [
    ...CLOSED.map(([decibels, bound]) => least(`digits, ${decibels} dB: nearest word right, %`, closed(`${decibels}`), bound)),
    least('digits, 20 dB: taken and right, %', percent('20', 'right'), 88),
    most('digits, 20 dB: taken and wrong, %', percent('20', 'wrong'), 0.8),
    shown('digits, 20 dB: asked again, %', percent('20', 'unsure')),
    ...[40, 10].flatMap((decibels) => [
      shown(`digits, ${decibels} dB: taken and right, %`, percent(`${decibels}`, 'right')),
      shown(`digits, ${decibels} dB: taken and wrong, %`, percent(`${decibels}`, 'wrong')),
    ]),
    ...[...speakers.keys()].flatMap((speaker) => [
      ...CLOSED.map(([decibels]) => shown(`${speaker}, ${decibels} dB: nearest word right, %`, closed(`${decibels} ${speaker}`))),
      shown(`${speaker}, 20 dB: taken and right, %`, percent(`20 ${speaker}`, 'right')),
      shown(`${speaker}, 20 dB: taken and wrong, %`, percent(`20 ${speaker}`, 'wrong')),
    ]),
    ...aMinute('talk of others', 'taken', (value) => most('talk of others taken for a word, a minute', value, 0.15)),
    ...aMinute('own talk', 'taken', (value) => most('own talk taken for a word, a minute', value, 0.4)),
    ...aMinute('clicks, beeps and drives', 'taken', (value) => most('clicks, beeps and drives taken for a word, a minute', value, 0.05)),
    ...aMinute('own talk', 'unsure', (value) => shown('own talk asked about, a minute', value)),
    ...aMinute('talk of others', 'unsure', (value) => shown('talk of others asked about, a minute', value)),
    most('decided after the end of the word, ms (median)', 1000 * late[Math.floor(late.length / 2)]!, 300),
    most('decided after the end of the word, ms (95th percentile)', 1000 * late[Math.floor(late.length * 0.95)]!, 600),
    most('cost, % of one core', (100 * cost.spent) / cost.heard, 5),
    least(`digits, 20 dB, ${LEARNED}: taken and right, %`, percent(LEARNED, 'right'), 88),
    most(`digits, 20 dB, ${LEARNED}: taken and wrong, %`, percent(LEARNED, 'wrong'), 0.8),
    shown(`digits, 20 dB, ${LEARNED}: asked again, %`, percent(LEARNED, 'unsure')),
    ...aMinute(`talk of others ${LEARNED}`, 'taken', (value) => most(`talk of others taken for a word ${LEARNED}, a minute`, value, 0.15)),
    ...aMinute(`own talk ${LEARNED}`, 'taken', (value) => most(`own talk taken for a word ${LEARNED}, a minute`, value, 0.4)),
    most(`cost ${LEARNED}, % of one core`, (100 * afterCost.spent) / afterCost.heard, 5),
    ...echoing(all),
    ...afterSounds(all),
    ...latePrompts(all, tell),
    ...besidePanel(all),
  ];
}

// Own words on spoken digits: how many are heard right, how many taken wrongly, how often other sounds are taken for
// one, how soon it is decided, and what it costs.
import { learnedFrom } from './learned.ts';
import { spokenDigits } from './spokenDigits.ts';
import { stretchesFor, trials } from './scenes.ts';
import { wordAt, type Recording } from './stream.ts';
import { OwnWordsEar, type EarEvent } from '../../../src/voice/ownWords/ear.ts';
import { recogniserOf } from '../../../src/voice/ownWords/recogniser.ts';
import type { Take } from '../../../src/voice/ownWords/take.ts';
import { least, most, shown, type Figure } from '../figure.ts';

const TIMES = 2;
const CLOSED = [
  [40, 93],
  [20, 90],
  [10, 80],
] as const;
const LEARNED = 'after a sweep that was learned from';

interface Counts {
  said: number;
  closed: number;
  right: number;
  wrong: number;
  unsure: number;
}

export function onSpokenDigits(data: string, tell: (sentence: string) => void): Figure[] | null {
  const speakers = spokenDigits(data);
  if (speakers === null) return null;
  const counts = new Map<string, Counts>();
  const talk = new Map<string, { taken: number; unsure: number; minutes: number }>();
  const late: number[] = [];
  const cost = { spent: 0, heard: 0 };
  const afterCost = { spent: 0, heard: 0 };

  for (const trial of trials(speakers, TIMES)) {
    tell(`${trial.speaker} teaches and is heard`);
    for (const [decibels] of CLOSED) {
      const said = trial.words(decibels);
      const heard = tried(trial.rate, trial.takes, said, cost);
      late.push(...heard.late);
      for (const key of [`${decibels}`, `${decibels} ${trial.speaker}`]) add(counts, key, heard);
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
  const percent = (key: string, what: 'closed' | 'right' | 'wrong' | 'unsure') => (100 * counts.get(key)![what]) / counts.get(key)!.said;
  const aMinute = (name: string, what: 'taken' | 'unsure', figure: (value: number) => Figure): Figure[] => {
    const sum = talk.get(name);
    if (sum !== undefined) return [figure(sum[what] / sum.minutes)];
    tell(`not measured: ${name} (the data has no words for it)`);
    return [];
  };
  late.sort((a, b) => a - b);
  return [
    ...CLOSED.map(([decibels, bound]) => least(`digits, ${decibels} dB: nearest word right, %`, percent(`${decibels}`, 'closed'), bound)),
    least('digits, 20 dB: taken and right, %', percent('20', 'right'), 80),
    most('digits, 20 dB: taken and wrong, %', percent('20', 'wrong'), 2),
    shown('digits, 20 dB: asked again, %', percent('20', 'unsure')),
    ...[40, 10].flatMap((decibels) => [
      shown(`digits, ${decibels} dB: taken and right, %`, percent(`${decibels}`, 'right')),
      shown(`digits, ${decibels} dB: taken and wrong, %`, percent(`${decibels}`, 'wrong')),
    ]),
    ...[...speakers.keys()].flatMap((speaker) => [
      ...CLOSED.map(([decibels]) => shown(`${speaker}, ${decibels} dB: nearest word right, %`, percent(`${decibels} ${speaker}`, 'closed'))),
      shown(`${speaker}, 20 dB: taken and right, %`, percent(`20 ${speaker}`, 'right')),
      shown(`${speaker}, 20 dB: taken and wrong, %`, percent(`20 ${speaker}`, 'wrong')),
    ]),
    ...aMinute('talk of others', 'taken', (value) => most('talk of others taken for a word, a minute', value, 0.2)),
    ...aMinute('own talk', 'taken', (value) => most('own talk taken for a word, a minute', value, 0.5)),
    ...aMinute('clicks, beeps and drives', 'taken', (value) => most('clicks, beeps and drives taken for a word, a minute', value, 0.05)),
    ...aMinute('own talk', 'unsure', (value) => shown('own talk asked about, a minute', value)),
    ...aMinute('talk of others', 'unsure', (value) => shown('talk of others asked about, a minute', value)),
    most('decided after the end of the word, ms (median)', 1000 * late[Math.floor(late.length / 2)]!, 400),
    shown('decided after the end of the word, ms (95th percentile)', 1000 * late[Math.floor(late.length * 0.95)]!),
    most('cost, % of one core', (100 * cost.spent) / cost.heard, 5),
    least(`digits, 20 dB, ${LEARNED}: taken and right, %`, percent(LEARNED, 'right'), 80),
    most(`digits, 20 dB, ${LEARNED}: taken and wrong, %`, percent(LEARNED, 'wrong'), 2),
    shown(`digits, 20 dB, ${LEARNED}: asked again, %`, percent(LEARNED, 'unsure')),
    ...aMinute(`talk of others ${LEARNED}`, 'taken', (value) => most(`talk of others taken for a word ${LEARNED}, a minute`, value, 0.2)),
    ...aMinute(`own talk ${LEARNED}`, 'taken', (value) => shown(`own talk taken for a word ${LEARNED}, a minute`, value)),
    most(`cost ${LEARNED}, % of one core`, (100 * afterCost.spent) / afterCost.heard, 5),
  ];
}

function listened(sound: Recording, rate: number, takes: readonly Take[]): { events: EarEvent[]; minutes: number } {
  const ear = new OwnWordsEar(rate, recogniserOf(takes, rate));
  return { events: ear.push(sound.samples), minutes: sound.samples.length / rate / 60 };
}

function tried(rate: number, takes: readonly Take[], said: Recording, cost: { spent: number; heard: number }): Counts & { late: number[] } {
  const recogniser = recogniserOf(takes, rate);
  const stretches = stretchesFor(said, rate);
  const closed = stretches.filter((stretch, index) => stretch !== null && recogniser.recognise(stretch)?.words[0]?.word === said.said[index]!.label).length;
  const ear = new OwnWordsEar(rate, recogniser);
  const started = performance.now();
  const events = ear.push(said.samples);
  cost.spent += (performance.now() - started) / 1000;
  cost.heard += said.samples.length / rate;
  const late: number[] = [];
  let [right, wrong, unsure] = [0, 0, 0];
  for (const event of events) {
    if (event.heard === 'unsure') unsure++;
    if (event.heard !== 'word') continue;
    const word = wordAt(said, event);
    if (word?.label === event.word) right++;
    else wrong++;
    if (word) late.push(event.at + 0.015 - word.ends);
  }
  return { said: said.said.length, closed, right, wrong, unsure, late };
}

function add(counts: Map<string, Counts>, key: string, more: Counts): void {
  const sum = counts.get(key) ?? { said: 0, closed: 0, right: 0, wrong: 0, unsure: 0 };
  for (const part of ['said', 'closed', 'right', 'wrong', 'unsure'] as const) sum[part] += more[part];
  counts.set(key, sum);
}

// One recording heard with one set of takes: what became of each word, how late it was decided, and what hearing it cost.
import { OwnWordsEar, type EarEvent } from '../../../src/voice/ownWords/ear.ts';
import { recogniserOf } from '../../../src/voice/ownWords/recogniser.ts';
import type { Take } from '../../../src/voice/ownWords/take.ts';
import { wordAt, type Recording } from './stream.ts';
import { stretchesFor } from './teaching.ts';

export interface Counts {
  said: number;
  right: number;
  wrong: number;
  unsure: number;
}

/** Seconds of one core, and seconds of sound. */
export interface Cost {
  spent: number;
  heard: number;
}

/** How many of the words are nearest to themselves, whether they are taken or not. */
export function nearestRight(rate: number, takes: readonly Take[], said: Recording): number {
  const recogniser = recogniserOf(takes, rate);
  return stretchesFor(said, rate).filter((stretch, index) => stretch !== null && recogniser.recognise(stretch)?.words[0]?.word === said.said[index]!.label)
    .length;
}

/** `late`: seconds from the end of each word that was taken to its decision. */
export function tried(rate: number, takes: readonly Take[], said: Recording, cost: Cost): Counts & { readonly late: readonly number[] } {
  const recogniser = recogniserOf(takes, rate);
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
  return { said: said.said.length, right, wrong, unsure, late };
}

export function listened(sound: Recording, rate: number, takes: readonly Take[]): { readonly events: readonly EarEvent[]; readonly minutes: number } {
  const ear = new OwnWordsEar(rate, recogniserOf(takes, rate));
  return { events: ear.push(sound.samples), minutes: sound.samples.length / rate / 60 };
}

export function add(counts: Map<string, Counts>, key: string, more: Counts): void {
  const sum = counts.get(key) ?? { said: 0, right: 0, wrong: 0, unsure: 0 };
  for (const part of ['said', 'right', 'wrong', 'unsure'] as const) sum[part] += more[part];
  counts.set(key, sum);
}

export const percentOf = (counts: ReadonlyMap<string, Counts>, key: string, what: 'right' | 'wrong' | 'unsure'): number =>
  (100 * counts.get(key)![what]) / counts.get(key)!.said;

// What came of every trial so far, a line each, so that a run that was broken off goes on where it was; and how long the test
// files took, so that the quick ones come first.
import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { Place } from './places.ts';
import type { Verdict } from './trial.ts';

export interface Trial {
  readonly place: Place;
  readonly verdict: Verdict;
}

const FOLDER = 'dist/spoil';
const DURATIONS = `${FOLDER}/durations.json`;

/** A place that is written otherwise by now, or lies elsewhere, is another place: its trial is not found again. */
const keyOf = ({ file, start, before, after }: Place): string => JSON.stringify([file, start, before, after]);

export interface Tally {
  of(place: Place): Trial | undefined;
  add(trial: Trial): void;
}

export function tallyOf(seed: number): Tally {
  mkdirSync(FOLDER, { recursive: true });
  const file = `${FOLDER}/seed-${seed}.jsonl`;
  const lines = existsSync(file) ? readFileSync(file, 'utf8').split('\n').filter(Boolean) : [];
  const trials = new Map(lines.map((line) => JSON.parse(line) as Trial).map((trial) => [keyOf(trial.place), trial]));
  return {
    of: (place) => trials.get(keyOf(place)),
    add(trial) {
      trials.set(keyOf(trial.place), trial);
      appendFileSync(file, `${JSON.stringify(trial)}\n`);
    },
  };
}

export const knownDurations = (): Map<string, number> =>
  new Map(existsSync(DURATIONS) ? Object.entries(JSON.parse(readFileSync(DURATIONS, 'utf8')) as Record<string, number>) : []);

export const keepDurations = (took: ReadonlyMap<string, number>): void => writeFileSync(DURATIONS, JSON.stringify(Object.fromEntries(took)));

// Words in rooms that ring on for 0.6 to 0.9 s, taught in a usual one.
import { least, most, shown, type Figure } from '../figure.ts';
import type { Trial } from './scenes.ts';
import { add, percentOf, tried, type Cost, type Counts } from './tried.ts';

const DECIBELS = 20;
const KEY = 'echo';

export function echoing(all: readonly Trial[]): Figure[] {
  const counts = new Map<string, Counts>();
  const cost: Cost = { spent: 0, heard: 0 };
  for (const trial of all) add(counts, KEY, tried(trial.rate, trial.takes, trial.echoing(DECIBELS), cost));
  const scene = 'rooms of 0.6 to 0.9 s, 20 dB';
  return [
    least(`${scene}: taken and right, %`, percentOf(counts, KEY, 'right'), 70),
    most(`${scene}: taken and wrong, %`, percentOf(counts, KEY, 'wrong'), 1.5),
    shown(`${scene}: nearest word right, %`, percentOf(counts, KEY, 'closed')),
    shown(`${scene}: asked again, %`, percentOf(counts, KEY, 'unsure')),
  ];
}

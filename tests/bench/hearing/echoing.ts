// Words and talk in rooms that ring on for 0.6 to 0.9 s, with what was taught in a usual one.
import { least, most, shown, type Figure } from '../figure.ts';
import type { Trial } from './scenes.ts';
import { add, listened, nearestRight, percentOf, tried, type Cost, type Counts } from './tried.ts';

const DECIBELS = 20;
const KEY = 'echo';

export function echoing(all: readonly Trial[]): Figure[] {
  const counts = new Map<string, Counts>();
  const cost: Cost = { spent: 0, heard: 0 };
  let nearest = 0;
  let [taken, minutes] = [0, 0];
  for (const trial of all) {
    const said = trial.echoing(DECIBELS);
    add(counts, KEY, tried(trial.rate, trial.takes, said, cost));
    nearest += nearestRight(trial.rate, trial.takes, said);
    const talk = trial.ownTalk(DECIBELS, 'echoing');
    if (talk === null) continue;
    const heard = listened(talk, trial.rate, trial.fewer);
    taken += heard.events.filter((event) => event.heard === 'word').length;
    minutes += heard.minutes;
  }
  const scene = 'rooms of 0.6 to 0.9 s, 20 dB';
  return [
    least(`${scene}: taken and right, %`, percentOf(counts, KEY, 'right'), 70),
    most(`${scene}: taken and wrong, %`, percentOf(counts, KEY, 'wrong'), 1.5),
    shown(`${scene}: nearest word right, %`, (100 * nearest) / counts.get(KEY)!.said),
    shown(`${scene}: asked again, %`, percentOf(counts, KEY, 'unsure')),
    ...(minutes > 0 ? [most(`${scene}: own talk taken for a word, a minute`, taken / minutes, 0.4)] : []),
  ];
}

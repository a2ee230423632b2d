// Words that come soon after a sound that is none: the mirror and the shutter, a key, a cough, a beep, the focus drive.
import { least, shown, type Figure } from '../figure.ts';
import { SOUNDS, type SoundName, type Trial } from './scenes.ts';
import { add, percentOf, tried, type Cost, type Counts } from './tried.ts';

const DECIBELS = 20;
const AFTER = [0.1, 0.3, 0.5, 1] as const;
type After = (typeof AFTER)[number];

/** Per cent of words taken and right; what has no bound is shown. */
const BOUNDS: Partial<Record<SoundName, Partial<Record<After, number>>>> = {
  shutter: { 0.3: 60, 0.5: 80 },
  key: { 0.3: 60, 0.5: 80 },
  cough: { 0.5: 80 },
  beep: { 0.5: 65 },
  drive: { 0.5: 65 },
};
/** As in all rooms. */
const WRONG = 'taken and wrong, %';

export function afterSounds(all: readonly Trial[]): Figure[] {
  const counts = new Map<string, Counts>();
  const cost: Cost = { spent: 0, heard: 0 };
  const names = Object.keys(SOUNDS) as SoundName[];
  for (const trial of all) {
    for (const name of names) {
      for (const seconds of AFTER) add(counts, `${name} ${seconds}`, tried(trial.rate, trial.takes, trial.after(name, seconds, DECIBELS), cost));
    }
  }
  return names.flatMap((name) =>
    AFTER.flatMap((seconds) => {
      const key = `${name} ${seconds}`;
      const bound = BOUNDS[name]?.[seconds];
      const says = `a word ${seconds} s after: ${name}, taken and right, %`;
      const right = percentOf(counts, key, 'right');
      return [
        bound === undefined ? shown(says, right) : least(says, right, bound),
        shown(`a word ${seconds} s after: ${name}, ${WRONG}`, percentOf(counts, key, 'wrong')),
      ];
    }),
  );
}

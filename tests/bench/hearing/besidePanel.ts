// Words said while the panel itself speaks: where the microphone does not hear the panel, as with headphones, and where it
// is not known that it does not.
import { OwnWordsEar, type EarEvent } from '../../../src/voice/ownWords/ear.ts';
import { recogniserOf } from '../../../src/voice/ownWords/recogniser.ts';
import { least, most, type Figure } from '../figure.ts';
import type { Trial } from './scenes.ts';

const DECIBELS = 20;
/** Seconds for which the panel speaks before and after the word. */
const BEFORE = 0.4;
const AFTER = 0.5;
/** Seconds of the room alone at the start of every recording, and how often the panel speaks in it. */
const ROOM = [0.5, 1.3] as const;
const SPOKEN = 4;

export function besidePanel(all: readonly Trial[]): Figure[] {
  let [right, wrong, told, said] = [0, 0, 0, 0];
  for (const trial of all) {
    const sound = trial.words(DECIBELS);
    const recogniser = recogniserOf(trial.takes, trial.rate);
    const between = (from: number, to: number) => sound.samples.subarray(Math.round(from * trial.rate), Math.round(to * trial.rate));
    const heard = (ear: OwnWordsEar, done: (events: readonly EarEvent[], label: string) => void) => {
      let at = ROOM[1];
      for (const { begins, ends, label } of sound.said) {
        ear.push(between(at, begins - BEFORE));
        at = ends + AFTER;
        done(ear.beside(between(begins - BEFORE, at)), label);
      }
    };
    const silent = new OwnWordsEar(trial.rate, recogniser);
    silent.push(between(0, ROOM[0]));
    for (let time = 0; time < SPOKEN; time++) {
      silent.beside(between(...ROOM));
      silent.push(between(...ROOM));
    }
    heard(silent, (events, label) => {
      said++;
      const words = events.flatMap((event) => (event.heard === 'word' ? [event.word] : []));
      right += words.filter((word) => word === label).length;
      wrong += words.filter((word) => word !== label).length;
    });
    const unknown = new OwnWordsEar(trial.rate, recogniser);
    unknown.push(between(0, ROOM[1]));
    heard(unknown, (events) => {
      told += events.some((event) => event.heard === 'word' || (event.heard === 'nothing' && event.missed !== null)) ? 1 : 0;
    });
  }
  const scene = 'said while the panel speaks';
  return [
    least(`${scene} unheard: taken and right, %`, (100 * right) / said, 60),
    most(`${scene} unheard: taken and wrong, %`, (100 * wrong) / said, 1.5),
    least(`${scene}: taken or told as not taken, %`, (100 * told) / said, 80),
  ];
}

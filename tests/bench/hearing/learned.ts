// What a first sweep leaves of own words, where the person lets it learn: words that were taken and stood become further
// takes. Nobody takes back what was right; what was wrong is taken back nine times in ten, and is learned in the tenth.
import { chanceFrom } from './chance.ts';
import type { Trial } from './scenes.ts';
import { wordAt } from './stream.ts';
import { OwnWordsEar } from '../../../src/voice/ownWords/ear.ts';
import { takeFrom, withLearned } from '../../../src/voice/ownWords/learning.ts';
import { recogniserOf } from '../../../src/voice/ownWords/recogniser.ts';
import type { Take } from '../../../src/voice/ownWords/take.ts';

const TAKEN_BACK = 0.9;
/** Loud enough for a microphone, and not too loud. */
const PEAK = 0.5;

/** The taught takes with those learned. A word that was asked back counts as said again. */
export function learnedFrom(trial: Trial, decibels: number): readonly Take[] {
  const chance = chanceFrom(61);
  const said = trial.firstSweep(decibels);
  const events = new OwnWordsEar(trial.rate, recogniserOf(trial.takes, trial.rate)).push(said.samples);
  return events.reduce<readonly Take[]>((takes, event) => {
    if (event.heard !== 'word' && event.heard !== 'unsure') return takes;
    const isRight = wordAt(said, event)?.label === event.word;
    if (!isRight && chance.next() < TAKEN_BACK) return takes;
    const take = takeFrom(event, PEAK);
    return take ? withLearned(takes, [take]) : takes;
  }, trial.takes);
}

// The panel's own prompt that comes out of a loudspeaker later than the panel knows, so that its end is heard when the ear
// is open again: 0.25 s is what the ear allows for by itself.
import { OwnWordsEar, type EarEvent } from '../../../src/voice/ownWords/ear.ts';
import { recogniserOf } from '../../../src/voice/ownWords/recogniser.ts';
import { most, shown, type Figure } from '../figure.ts';
import type { Trial } from './scenes.ts';

const DECIBELS = 20;
const ALLOWED = 0.25;
const LATE = [0.3, 0.5, 0.8] as const;

export function latePrompts(all: readonly Trial[], tell: (sentence: string) => void): Figure[] {
  return LATE.flatMap((late) => {
    let [taken, asked, prompts] = [0, 0, 0];
    for (const trial of all) {
      const sound = trial.prompts(DECIBELS);
      if (sound === null) continue;
      prompts += sound.said.length;
      const ear = new OwnWordsEar(trial.rate, recogniserOf(trial.takes, trial.rate));
      let at = 0;
      const upTo = (seconds: number) => sound.samples.subarray(at, (at = Math.max(at, Math.round(seconds * trial.rate))));
      const heard: EarEvent[] = [];
      for (const { begins, ends } of sound.said) {
        heard.push(...ear.push(upTo(begins - late)), ...ear.beside(upTo(ends - late + ALLOWED)));
      }
      heard.push(...ear.push(sound.samples.subarray(at)));
      taken += heard.filter((event) => event.heard === 'word').length;
      asked += heard.filter((event) => event.heard === 'unsure').length;
    }
    if (prompts === 0) {
      tell('not measured: prompts that come late (the data has one speaker)');
      return [];
    }
    const scene = `a prompt that comes ${late} s late`;
    return [most(`${scene}: taken for a word, %`, (100 * taken) / prompts, 0.5), shown(`${scene}: asked about, %`, (100 * asked) / prompts)];
  });
}

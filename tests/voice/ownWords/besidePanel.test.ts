// Contract of hearing beside the panel: a word that is said while the panel sounds counts where the microphone does not hear
// the panel, and is told as missed where it does; a sound that is late time after time is the panel's own.
import { describe, expect, test } from 'vitest';
import { OwnWordsEar, type EarEvent } from '../../../src/voice/ownWords/ear.ts';
import { LateOutput } from '../../../src/voice/ownWords/lateOutput.ts';
import { recogniserOf } from '../../../src/voice/ownWords/recogniser.ts';
import { TakeRecording } from '../../../src/voice/ownWords/recordTake.ts';
import { takeOf } from '../../../src/voice/ownWords/take.ts';
import { inRoom, say, WORDS } from './spoken.ts';

const RATE = 16_000;
const QUIET = 0.0005;
const TAKES = Object.entries(WORDS).flatMap(([word, sounds]) =>
  [1, 2, 3, 4, 5].map((seed) => takeOf(word, new TakeRecording(RATE).push(inRoom([say(sounds, RATE, seed)], RATE, QUIET, seed))!.stretch!)),
);
const RECOGNISER = recogniserOf(TAKES, RATE);
/** Nothing that was taught. */
const PROMPT = Object.values(WORDS).flatMap((sounds, seed) => [...say([...sounds, ...sounds], RATE, seed)]);

const quiet = (seconds: number, seed: number) => inRoom([], RATE, QUIET, seed, seconds);
const openEar = () => {
  const ear = new OwnWordsEar(RATE, RECOGNISER);
  ear.push(quiet(1, 2));
  return ear;
};
const barged = inRoom([say(WORDS['repeat']!, RATE, 12)], RATE, QUIET, 7);

/** The panel speaks four times, and the microphone hears this of it. */
function afterPrompts(heard: () => Float32Array): OwnWordsEar {
  const ear = openEar();
  for (const seed of [3, 4, 5, 6]) {
    ear.beside(heard());
    ear.push(quiet(1, seed));
  }
  return ear;
}

describe('a word said while the panel sounds', () => {
  test('counts where the microphone hears nothing of the panel, each time', () => {
    const ear = afterPrompts(() => quiet(1.5, 9));
    for (const seed of [1, 2]) {
      const said = ear.beside(barged);
      expect(said.at(-1)).toMatchObject({ heard: 'word', word: 'repeat' });
      ear.push(quiet(1, seed));
    }
  });

  test('began before now by as long as the person spoke, so that it is judged by the step it was about', () => {
    const ear = afterPrompts(() => quiet(1.5, 9));
    const word = ear.beside(barged).at(-1)!;
    expect(word.heard === 'word' && word.at - word.began).toBeGreaterThan(0.3);
  });

  test('counts also after something was heard once: that was a person', () => {
    const ear = afterPrompts(() => quiet(1.5, 9));
    ear.beside(inRoom([Float32Array.from(PROMPT)], RATE, QUIET, 3));
    ear.push(quiet(1, 8));
    expect(ear.beside(barged).at(-1)).toMatchObject({ heard: 'word', word: 'repeat' });
    ear.push(quiet(1, 8));
    for (const seed of [3, 4]) {
      ear.beside(inRoom([Float32Array.from(PROMPT)], RATE, QUIET, seed));
      ear.push(quiet(1, 8));
    }
    expect(ear.beside(barged).at(-1)).toMatchObject({ heard: 'nothing', because: 'beside the panel', missed: 'repeat' });
  });

  test('is told as missed where the microphone hears the panel', () => {
    const ear = afterPrompts(() => Float32Array.from([...quiet(0.2, 9), ...PROMPT]));
    expect(ear.beside(barged).at(-1)).toMatchObject({ heard: 'nothing', because: 'beside the panel', missed: 'repeat' });
  });

  test('is told as missed before it is known whether the microphone hears the panel', () => {
    expect(openEar().beside(barged).at(-1)).toMatchObject({ heard: 'nothing', because: 'beside the panel', missed: 'repeat' });
  });

  test('and none is told where nothing like a taught word is heard', () => {
    expect(openEar().beside(inRoom([Float32Array.from(PROMPT)], RATE, QUIET, 3))).toEqual([]);
  });
});

describe('a panel that comes late out of its loudspeaker', () => {
  const LATE = 0.5;
  /** Each time the panel falls silent for itself, its sound goes on for as long as it is late. */
  const late = (times: number) => {
    const ear = openEar();
    for (let time = 0; time < times; time++) {
      ear.beside(Float32Array.from([...quiet(LATE, 3), ...PROMPT.slice(0, RATE)]));
      ear.push(Float32Array.from([...PROMPT.slice(RATE, (1 + LATE) * RATE), ...quiet(1, 4)]));
    }
    ear.beside(quiet(0.5, 5));
    return ear;
  };
  const soonAfter = Float32Array.from([...quiet(0.25, 6).subarray(0, 0.25 * RATE), ...barged.subarray(1.6 * RATE)]);
  const last = (events: readonly EarEvent[]) => events.at(-1);

  test('is known by it after three times: what begins while it may still sound is no word', () => {
    expect(last(late(0).push(soonAfter))).toMatchObject({ heard: 'word', word: 'repeat' });
    expect(last(late(3).push(soonAfter))).toMatchObject({ heard: 'nothing', because: 'beside the panel', missed: 'repeat' });
  });
});

test('a sound that ran on once is a person; ran on time after time, the panel; and never longer than a second', () => {
  const output = new LateOutput();
  output.note(40);
  expect(output.frames).toBe(0);
  output.note(0);
  output.note(0);
  expect(output.frames).toBe(0);
  output.note(50);
  output.note(500);
  expect(output.frames).toBe(50);
  output.note(500);
  expect(output.frames).toBe(100);
});

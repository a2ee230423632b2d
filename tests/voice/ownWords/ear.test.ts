// Contract of the open ear: words a person taught are heard in any pieces and at any sample rate, other sounds are not.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { OwnWordsEar, type EarEvent } from '../../../src/voice/ownWords/ear.ts';
import { recogniserOf, type Recogniser } from '../../../src/voice/ownWords/recogniser.ts';
import { TakeRecording } from '../../../src/voice/ownWords/recordTake.ts';
import { takeOf } from '../../../src/voice/ownWords/take.ts';
import { beeps, cough, drive, key, shutter } from '../../bench/hearing/noises.ts';
import { inRoom, say, WORDS } from './spoken.ts';

const RATE = 16_000;
const QUIET = 0.0005;
const SILENCE = new Float32Array(0);

const TAKES = Object.entries(WORDS).flatMap(([word, sounds]) =>
  [1, 2, 3, 4, 5].map((seed) => {
    const recorded = new TakeRecording(RATE).push(inRoom([say(sounds, RATE, seed)], RATE, QUIET, seed));
    if (!recorded?.stretch) throw new Error(`${word} ${seed} was not heard`);
    return takeOf(word, recorded.stretch);
  }),
);
const RECOGNISER = recogniserOf(TAKES, RATE);
const wordsIn = (events: readonly EarEvent[]) => events.flatMap((event) => (event.heard === 'word' ? [event.word] : []));

test('words said again are heard as themselves, in order', () => {
  const said = Object.keys(WORDS);
  const sound = inRoom(
    said.map((word, index) => say(WORDS[word] ?? [], RATE, 20 + index)),
    RATE,
    QUIET,
    7,
  );
  expect(wordsIn(new OwnWordsEar(RATE, RECOGNISER).push(sound))).toEqual(said);
});

test('a louder room than the one they were taught in does not turn one word into another', () => {
  const said = Object.keys(WORDS);
  const sound = inRoom(
    said.map((word, index) => say(WORDS[word] ?? [], RATE, 30 + index)),
    RATE,
    0.02,
    8,
  );
  const heard = wordsIn(new OwnWordsEar(RATE, RECOGNISER).push(sound));
  expect(said.filter((word) => heard.includes(word))).toEqual(heard);
});

test('what comes out does not depend on the pieces in which the samples come', () => {
  const sound = inRoom([say(WORDS['undo'] ?? [], RATE, 41), say(WORDS['left'] ?? [], RATE, 42)], RATE, QUIET, 3);
  const whole = new OwnWordsEar(RATE, RECOGNISER).push(sound);
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 8 }), (pieces) => {
      const ear = new OwnWordsEar(RATE, RECOGNISER);
      const events: EarEvent[] = [];
      for (let at = 0, index = 0; at < sound.length; index++) {
        const next = at + (pieces[index % pieces.length] ?? 1);
        events.push(...ear.push(sound.slice(at, next)));
        at = next;
      }
      expect(events).toEqual(whole);
    }),
    { numRuns: 5 },
  );
});

test.each([8_000, 44_100, 48_000])('words taught at 16 kHz are heard through a microphone of %i Hz', (rate) => {
  const sound = inRoom([say(WORDS['solid'] ?? [], rate, 51), say(WORDS['repeat'] ?? [], rate, 52)], rate, QUIET, 5);
  const events = new OwnWordsEar(rate, recogniserOf(TAKES, rate)).push(sound);
  expect(events.flatMap((event) => ('word' in event ? [event.word] : []))).toEqual(['solid', 'repeat']);
});

test('a word that does not count now is not taken', () => {
  const sound = inRoom([say(WORDS['undo'] ?? [], RATE, 61)], RATE, QUIET, 6);
  const events = new OwnWordsEar(RATE, RECOGNISER, () => ['left']).push(sound);
  expect(wordsIn(events)).toEqual([]);
  expect(events.at(-1)).toMatchObject({ heard: 'nothing', because: 'not now' });
});

test('the beginning of a word is told before the word, and the decision within half a second of its end', () => {
  const sound = inRoom([say(WORDS['undo'] ?? [], RATE, 71)], RATE, QUIET, 6);
  const [beginning, word] = new OwnWordsEar(RATE, RECOGNISER).push(sound);
  expect(beginning).toMatchObject({ heard: 'beginning' });
  expect(word).toMatchObject({ heard: 'word', word: 'undo' });
  expect(word?.heard === 'word' ? word.at - word.ended : Infinity).toBeLessThan(0.5);
});

describe('other sounds', () => {
  const heardOf = (...things: Float32Array[]) => wordsIn(new OwnWordsEar(RATE, RECOGNISER).push(inRoom(things, RATE, QUIET, 9)));

  test('a click and a beep are no words', () => {
    const click = Float32Array.from({ length: 800 }, (_, i) => 0.5 * Math.exp(-i / 100) * Math.sin(i));
    const beep = Float32Array.from({ length: 3000 }, (_, i) => 0.3 * Math.sin((2 * Math.PI * 2500 * i) / RATE));
    expect(heardOf(click, beep, click)).toEqual([]);
  });

  test('talk without a pause is no word, even where it holds one', () => {
    const talk = [...Object.values(WORDS), ...Object.values(WORDS), ...Object.values(WORDS)].flatMap((sounds, seed) => [...say(sounds, RATE, seed)]);
    expect(heardOf(Float32Array.from(talk))).toEqual([]);
  });

  test('a word close upon other talk is part of it', () => {
    const talk = Object.values(WORDS).flatMap((sounds, seed) => [...say([...sounds, ...sounds], RATE, seed)]);
    const sound = inRoom([Float32Array.from(talk), say(WORDS['undo'] ?? [], RATE, 3)], RATE, QUIET, 9, 0.4);
    expect(wordsIn(new OwnWordsEar(RATE, RECOGNISER).push(sound))).toEqual([]);
  });

  test('steady noise that starts is taken for the room after a while, and words are heard again', () => {
    const fan = inRoom([], RATE, 0.01, 4, 4);
    const later = inRoom([say(WORDS['undo'] ?? [], RATE, 81)], RATE, 0.01, 5);
    const ear = new OwnWordsEar(RATE, RECOGNISER);
    ear.push(inRoom([], RATE, QUIET, 2, 1));
    ear.push(fan);
    expect(wordsIn(ear.push(later))).toEqual(['undo']);
  });
});

describe('a word is heard that begins 0.3 s after', () => {
  test.each([
    ['the mirror and shutter', shutter],
    ['a key', key],
    ['a cough', cough],
    ['beeps', beeps],
    ['the focus drive', drive],
  ] as const)('%s', (_, make) => {
    const sound = make(RATE, 5).map((value) => 0.2 * value);
    const both = Float32Array.from([...sound, ...new Float32Array(0.3 * RATE), ...say(WORDS['repeat'] ?? [], RATE, 12)]);
    expect(wordsIn(new OwnWordsEar(RATE, RECOGNISER).push(inRoom([both], RATE, QUIET, 6)))).toEqual(['repeat']);
  });
});

describe('a word that is not taken is told as missed', () => {
  test.each(['before', 'after'] as const)('when a syllable stands close %s it', (side) => {
    const [word, syllable, pause] = [say(WORDS['repeat']!, RATE, 12), say(['a', 'u'], RATE, 5), new Float32Array(0.22 * RATE)];
    const both = side === 'before' ? [...syllable, ...pause, ...word] : [...word, ...pause, ...syllable];
    const events = new OwnWordsEar(RATE, RECOGNISER).push(inRoom([Float32Array.from(both)], RATE, QUIET, 6));
    expect(events.at(-1)).toMatchObject({ heard: 'nothing', because: 'amid talk', missed: 'repeat' });
  });

  test('when talk ran before it', () => {
    const talk = Object.values(WORDS).flatMap((sounds, seed) => [...say([...sounds, ...sounds], RATE, seed)]);
    const sound = inRoom([Float32Array.from(talk), say(WORDS['repeat'] ?? [], RATE, 3)], RATE, QUIET, 9, 0.5);
    expect(new OwnWordsEar(RATE, RECOGNISER).push(sound).at(-1)).toMatchObject({ heard: 'nothing', because: 'amid talk', missed: 'repeat' });
  });

  test('when it had begun while the panel sounded', () => {
    const ear = new OwnWordsEar(RATE, RECOGNISER);
    ear.push(inRoom([], RATE, QUIET, 2, 1));
    ear.beside(SILENCE);
    const events = ear.push(Float32Array.from([...say(WORDS['repeat'] ?? [], RATE, 12), ...inRoom([], RATE, QUIET, 3, 1)]));
    expect(events.at(-1)).toMatchObject({ heard: 'nothing', because: 'beside the panel', missed: 'repeat' });
  });

  test('and a doubtful word is told at once when the panel begins to sound, since nothing can follow it', () => {
    const sound = inRoom([say(WORDS['undo'] ?? [], RATE, 71)], RATE, QUIET, 6);
    const doubtful: Recogniser = {
      ...RECOGNISER,
      recognise: (heard) => {
        const recognition = RECOGNISER.recognise(heard);
        return recognition && { ...recognition, sureness: 2.3 };
      },
    };
    const ear = new OwnWordsEar(RATE, doubtful);
    expect(wordsIn(ear.push(sound.subarray(0, 2.45 * RATE)))).toEqual([]);
    expect(wordsIn(ear.beside(SILENCE))).toEqual(['undo']);
  });

  test('and none when it begins after the panel was silent for a while', () => {
    const ear = new OwnWordsEar(RATE, RECOGNISER);
    ear.push(inRoom([], RATE, QUIET, 2, 1));
    ear.beside(SILENCE);
    expect(wordsIn(ear.push(inRoom([say(WORDS['repeat'] ?? [], RATE, 12)], RATE, QUIET, 3)))).toEqual(['repeat']);
  });
});

test('an ear with nothing taught hears nothing and does not fail', () => {
  const sound = inRoom([say(WORDS['undo'] ?? [], RATE, 91)], RATE, QUIET, 6);
  expect(wordsIn(new OwnWordsEar(RATE, recogniserOf([], RATE)).push(sound))).toEqual([]);
});

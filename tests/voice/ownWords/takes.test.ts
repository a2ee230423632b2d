// Contract of takes: each is checked before it is kept, stored readably, and left out when its word is taught anew.
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { withoutWord } from '../../../src/voice/ownWords/forgetting.ts';
import { clearnessOf } from '../../../src/voice/ownWords/noiseMeter.ts';
import { recogniserOf } from '../../../src/voice/ownWords/recogniser.ts';
import { TakeRecording } from '../../../src/voice/ownWords/recordTake.ts';
import { OwnWords, Take, takeOf } from '../../../src/voice/ownWords/take.ts';
import { takeFaultOf, type TakeRecorded } from '../../../src/voice/ownWords/takeQuality.ts';
import { words } from '../../../src/words/catalogue.ts';
import { inRoom, say, WORDS } from './spoken.ts';

const RATE = 16_000;
/** Of a room that falls by 60 dB in 0.6 s: samples later, and how loud. */
const ECHOES = Array.from({ length: 14 }, (_, n) => [Math.round((0.003 + 0.041 * n) * RATE), 10 ** ((-3 * 0.041 * n) / 0.6)] as const);
function recorded(word: string, seed: number, { noise = 0.0005, loud = 0.1 } = {}): TakeRecorded {
  const recording = new TakeRecording(RATE);
  return recording.push(inRoom([say(WORDS[word] ?? [], RATE, seed, loud)], RATE, noise, seed)) ?? recording.gaveUp();
}
function stretchOf(word: string, seed: number) {
  const { stretch } = recorded(word, seed);
  if (stretch === null) throw new Error('not heard');
  return stretch;
}
const takesOf = (...words: string[]) => words.flatMap((word) => [1, 2, 3].map((seed) => takeOf(word, stretchOf(word, seed))));

describe('a take is judged', () => {
  test('good when the word stands out of the noise, with quiet around it', () => {
    expect(takeFaultOf('undo', recorded('undo', 1), null)).toBeNull();
  });

  test('too quiet when it hardly stands out, and not heard when nothing was heard at all', () => {
    expect(takeFaultOf('undo', recorded('undo', 1, { noise: 0.04, loud: 0.02 }), null)?.is).toBe('too quiet');
    expect(takeFaultOf('undo', recorded('undo', 1, { loud: 0 }), null)?.is).toBe('not heard');
  });

  test('too loud when the microphone ran out of range', () => {
    expect(takeFaultOf('undo', recorded('undo', 1, { loud: 1.5 }), null)?.is).toBe('too loud');
  });

  test('cut off when the recording began with the word', () => {
    const { stretch, ...good } = recorded('undo', 1);
    expect(takeFaultOf('undo', { ...good, stretch: stretch && { ...stretch, begins: 0 } }, null)?.is).toBe('cut off');
  });

  test('whole though the room rings on after it', () => {
    const sound = say(WORDS['undo'] ?? [], RATE, 1);
    const ringing = new Float32Array(sound.length + RATE);
    for (const [at, value] of sound.entries()) for (const [later, gain] of ECHOES) ringing[at + later] = (ringing[at + later] ?? 0) + gain * value;
    const take = new TakeRecording(RATE).push(inRoom([ringing], RATE, 0.0005, 1));
    expect(take && takeFaultOf('undo', take, null)).toBeNull();
    expect(take?.stretch).not.toBeNull();
  });

  test('too like another word when it is nearer to that one, which is named', () => {
    const recogniser = recogniserOf(takesOf('undo', 'left'), RATE);
    const take = recorded('left', 9);
    const compared = take.stretch && recogniser.recognise(take.stretch);
    const fault = takeFaultOf('undo', take, compared);
    expect(fault).toEqual({ is: 'too like another word', other: 'left' });
    expect(fault && words('take').fault('undo', fault)).toBe('That sounded more like “left” than “undo”. Say it again, or choose another word.');
    expect(takeFaultOf('left', take, compared)).toBeNull();
  });
});

describe('takes are kept', () => {
  test('as they were, within half a decibel, through the stored form', () => {
    const take = takeOf('undo', stretchOf('undo', 1));
    const own: OwnWords = { version: 1, language: 'en-US', takes: [take] };
    expect(v.parse(OwnWords, JSON.parse(JSON.stringify(own)))).toEqual(own);
  });

  test('only with whole frames', () => {
    const take = takeOf('undo', stretchOf('undo', 1));
    expect(v.safeParse(Take, { ...take, frames: take.frames.slice(1) }).success).toBe(false);
  });
});

test('a word is taught anew without its old takes', () => {
  expect(withoutWord(takesOf('undo', 'left'), 'undo').map(({ word }) => word)).toEqual(['left', 'left', 'left']);
});

test('advice says to come closer or use the switch when the room is too loud', () => {
  expect(clearnessOf(stretchOf('undo', 1))).not.toBe('too faint');
  const faint = {
    frames: Array.from({ length: 40 }, () => new Float32Array(28).fill(3)),
    noise: new Float32Array(28).fill(1),
  };
  expect(words('take').heard[clearnessOf(faint)]).toBe('The room is too loud for this distance. Come closer, or use the switch.');
});

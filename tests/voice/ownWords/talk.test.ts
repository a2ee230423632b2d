// Contract of telling talk from the sounds beside a camera: what is long and rises and falls is talk, and nothing else.
import { describe, expect, test } from 'vitest';
import { Endpoints } from '../../../src/voice/ownWords/endpoints.ts';
import { Frames } from '../../../src/voice/ownWords/bands.ts';
import { isSyllable, isTalk, isTone } from '../../../src/voice/ownWords/talk.ts';
import { beeps, cough, drive, key, shutter } from '../../bench/hearing/noises.ts';
import { inRoom, say, WORDS } from './spoken.ts';

const RATE = 16_000;
const stretchesOf = (sound: Float32Array) => {
  const endpoints = new Endpoints();
  const heard = inRoom([sound.map((value) => 0.1 * value)], RATE, 0.0005, 4);
  return new Frames(RATE).push(heard).flatMap((frame) => {
    const sounding = endpoints.push(frame);
    return sounding?.sign === 'ended' ? sounding.pieces.map(({ stretch }) => stretch) : [];
  });
};
const SEEDS = Array.from({ length: 20 }, (_, seed) => seed);

describe.each([
  ['mirror and shutter', shutter],
  ['a key', key],
  ['a cough', cough],
  ['beeps', beeps],
  ['the focus drive', drive],
] as const)('%s', (_, make) => {
  test('is no talk', () => {
    expect(SEEDS.filter((seed) => stretchesOf(make(RATE, seed)).some(isTalk))).toEqual([]);
  });
});

test('a beep is a tone, and a word is none', () => {
  expect(SEEDS.filter((seed) => !stretchesOf(beeps(RATE, seed)).every(isTone))).toEqual([]);
  expect(stretchesOf(say(WORDS['undo'] ?? [], RATE, 3, 1)).some(isTone)).toBe(false);
});

test('words run together are talk', () => {
  const talk = Object.values(WORDS).flatMap((sounds, seed) => [...say(sounds, RATE, seed, 1)]);
  expect(stretchesOf(Float32Array.from(talk)).some(isTalk)).toBe(true);
});

test('a word is at least a syllable; a click, a key and a beep are none', () => {
  for (const sounds of Object.values(WORDS)) expect(stretchesOf(say(sounds, RATE, 3, 1)).every(isSyllable)).toBe(true);
  for (const make of [shutter, key, beeps]) expect(SEEDS.filter((seed) => stretchesOf(make(RATE, seed)).some(isSyllable))).toEqual([]);
});

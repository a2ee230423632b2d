// Contract of the check of a take: the worst that is wrong is told, and each limit is the first that is refused or the last that passes.
import { expect, test } from 'vitest';
import { clearanceOf, takeFaultOf, type TakeRecorded } from '../../../src/voice/ownWords/takeQuality.ts';
import type { Recognition } from '../../../src/voice/ownWords/recogniser.ts';

const frames = (count: number, power: number) => Array.from({ length: count }, () => Float32Array.of(power));
const stretch = (count = 40, power = 100) => ({ frames: frames(count, power), noise: Float32Array.of(1), begins: 2, ends: 2 + count });
const good: TakeRecorded = { stretch: stretch(), peak: 0.5, long: false };
const faultOf = (changed: Partial<TakeRecorded>) => takeFaultOf('undo', { ...good, ...changed }, null);

test.each([
  ['a good one', {}, null],
  ['longer than any word', { long: true, stretch: null }, 'too long'],
  ['nothing', { stretch: null }, 'not heard'],
  ['nearly the most a microphone can tell', { peak: 0.989 }, null],
  ['the most a microphone can tell', { peak: 0.99 }, 'too loud'],
  ['sound from the second frame on', { stretch: { ...stretch(), begins: 1 } }, 'cut off'],
  ['33 frames', { stretch: stretch(33) }, null],
  ['32 frames', { stretch: stretch(32) }, 'too short'],
  // 16.9 over a noise of 1 leaves 15.9, 12.01 dB; 16.8 leaves 15.8, 11.99 dB.
  ['a little over 12 dB', { stretch: stretch(40, 16.9) }, null],
  ['a little under 12 dB', { stretch: stretch(40, 16.8) }, 'too quiet'],
] as const)('%s', (_, changed, fault) => {
  expect(faultOf(changed)).toEqual(fault === null ? null : { is: fault });
});

test('the loudest quarter counts, and silence has no clearance that fails', () => {
  const noise = Float32Array.of(1, 1);
  const loud = [...frames(2, 0), ...frames(6, 0)].map((_, t) => (t < 2 ? Float32Array.of(12, 10) : Float32Array.of(1, 1)));
  expect(clearanceOf({ frames: loud, noise })).toBeCloseTo(10, 6);
  expect(clearanceOf({ frames: frames(8, 0), noise: Float32Array.of(0) })).toBeCloseTo(80, 6);
  expect(clearanceOf({ frames: frames(2, 11), noise: Float32Array.of(1) })).toBeCloseTo(10, 6);
});

const compared = (own: number, other: number, evidence = 0): Recognition => {
  const words = [
    { word: 'undo', apart: own },
    { word: 'pause', apart: other },
  ].sort((a, b) => a.apart - b.apart);
  return { words, evidence: { apart: evidence } } as unknown as Recognition;
};

test.each([
  ['nearer to another word', 1, 0.94, 0, { is: 'too like another word', other: 'pause' }],
  ['about as near to another', 1, 0.95, 0, null],
  ['1.9 times as far from its own as usual', 1, 2, Math.log(1.9) - 1e-9, null],
  ['further than that', 1, 2, Math.log(1.91), { is: 'unlike the other takes' }],
  ['further than that, but another is first', 1, 0.96, Math.log(1.91), null],
] as const)('against the other takes: %s', (_, own, other, evidence, fault) => {
  expect(takeFaultOf('undo', good, compared(own, other, evidence))).toEqual(fault);
});

test('a word that has no takes yet is like none', () => {
  expect(takeFaultOf('help', good, compared(1, 0.5, 9))).toBeNull();
});

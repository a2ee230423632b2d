// Where words begin and end in drawn loudness, kept to seven digits: what each frame told, and the noise that was followed.
import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../src/practice/random.ts';
import { Endpoints, type Sounding } from '../../../src/voice/ownWords/endpoints.ts';
import { piecesOf, type SoundPiece, type Stretch } from '../../../src/voice/ownWords/pieces.ts';
import { isSyllable, isTalk, isTone } from '../../../src/voice/ownWords/talk.ts';
import { kept } from '../../kept/kept.ts';
import { summed } from '../../kept/summed.ts';
import { framesBy, loudnessBy, runs } from './keptStuff.ts';

const place = ({ begins, ends, frames, noise }: Stretch): number[] => [begins, ends, frames.length, summed(noise)];
const piece = ({ stretch, long, later }: SoundPiece): number[] => [
  ...place(stretch).slice(0, 3),
  long ? 1 : 0,
  ...(later === null ? [] : [...place(later.stretch).slice(0, 3), ...place(later.before).slice(0, 3)]),
];
const SIGNS = { began: 1, slight: 2, ended: 3 } as const;
const told = (sounding: Sounding): number[] =>
  sounding.sign === 'ended'
    ? [3, sounding.begins, sounding.pieces.indexOf(sounding.loudest), ...place(sounding.loudest.stretch), ...sounding.pieces.flatMap(piece)]
    : [SIGNS[sounding.sign]];

function heard(frames: readonly Float32Array[]): unknown[] {
  const endpoints = new Endpoints();
  const noise: number[] = [];
  const soundings = frames.flatMap((frame, at) => {
    const sounding = endpoints.push(frame);
    noise.push(endpoints.noisePower);
    return sounding === null ? [] : [[at, ...told(sounding)]];
  });
  return [...soundings, [summed(noise), ...noise.slice(-1), endpoints.heard]];
}

describe('what drawn loudness told', () => {
  test.each([1, 2, 3, 4])('in bands that scatter, %i', (bands) => {
    const told = () =>
      Array.from({ length: 9 }, (_, seed) => heard(framesBy(seed, [...runs([1, 20 + 3 * seed]), ...loudnessBy(seed + 10 * bands, 14)], 3 * bands)));
    expect(kept(told)).toMatchSnapshot();
  });

  test('hardly over the noise', () => {
    const faint = (seed: number) => {
      const random = seededRandom(seed);
      return [...runs([1, 30]), ...Array.from({ length: 20 }, () => runs([1 + 5 * random(), 1 + Math.floor(12 * random())], [1, Math.floor(9 * random())])).flat()]; // prettier-ignore
    };
    expect(kept(() => Array.from({ length: 12 }, (_, seed) => heard(framesBy(seed, faint(seed), 6))))).toMatchSnapshot();
  });

  test('in a room that rings', () => {
    const ringing = (seed: number, falls: number) => runs([1, 30], [3000, 15 + seed]).concat(Array.from({ length: 160 }, (_, t) => 1 + 3000 * falls ** t), runs([800, 12], [1, 40])); // prettier-ignore
    expect(kept(() => [0.8, 0.86, 0.9, 0.93, 0.95, 0.97, 0.985].map((falls, seed) => heard(framesBy(seed, ringing(seed, falls), 5))))).toMatchSnapshot();
  });

  test('without an end, and out of silence', () => {
    const loud = [runs([1, 40], [50, 330], [1, 60], [50, 640], [1, 60]), runs([0, 30], [5, 20], [0, 60]), runs([60, 8], [1, 16], [60, 30], [1, 60])];
    expect(kept(() => loud.map((powers, seed) => heard(framesBy(seed + 3, powers, 4))))).toMatchSnapshot();
  });
});

test('the pieces of drawn loudness', () => {
  const told = () =>
    Array.from({ length: 90 }, (_, seed) => {
      const loud = loudnessBy(seed, 1 + (seed % 9), seed % 2 === 0 ? 1 : 0.01);
      const frames = framesBy(seed, loud, 1);
      const [first, last] = [seed % 7, loud.length - (seed % 5)];
      const found = piecesOf({ frames, noise: Float32Array.of(1), loud, from: 100 }, first, last);
      return found === null ? [0] : [found.pieces.indexOf(found.loudest), ...found.pieces.flatMap(piece)];
    });
  expect(kept(told)).toMatchSnapshot();
});

test('what of drawn stretches is talk, a tone, a syllable', () => {
  const random = seededRandom(77);
  const told = () =>
    Array.from({ length: 160 }, (_, seed) => {
      const [length, height, bands] = [1 + Math.floor(75 * random()), 12 * random(), 1 + Math.floor(20 * random())];
      const slow = 2 + 10 * random();
      const tilt = 0.2 + 1.2 * random();
      const loud = [...runs([0.1, 12]), ...Array.from({ length }, (__, t) => 10 ** ((height * Math.sin(t / slow) + 6) / 10)), ...runs([0.1, 12])];
      const frames = framesBy(seed, loud, bands).map((frame) => frame.map((power, b) => power * tilt ** b));
      const stretch: Stretch = { frames, noise: new Float32Array(bands).fill(0.1 * random()), begins: 0, ends: frames.length };
      return (isTalk(stretch) ? 1 : 0) + (isTone(stretch) ? 2 : 0) + (isSyllable(stretch) ? 4 : 0);
    });
  expect(kept(told)).toMatchSnapshot();
});

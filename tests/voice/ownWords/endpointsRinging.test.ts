// Contract of where a word begins in what rings on, in the first moments of the ear, and in what never ends; noise is 1 in each band.
import { expect, test } from 'vitest';
import { Endpoints, type Sounding } from '../../../src/voice/ownWords/endpoints.ts';

const run = <T>(what: T, count: number): T[] => Array.from({ length: count }, () => what);
const swelling = (by: number, count: number, from = 1): number[] => Array.from({ length: count }, (_, t) => from * by ** (t + 1));

function told(frames: readonly (number | readonly number[])[], endpoints = new Endpoints()): (Sounding & { readonly at: number })[] {
  return frames.flatMap((powers, at) => {
    const sounding = endpoints.push(typeof powers === 'number' ? new Float32Array(2).fill(powers) : Float32Array.from(powers));
    return sounding === null ? [] : [{ ...sounding, at }];
  });
}
const signs = (frames: readonly (number | readonly number[])[]) => told(frames).map(({ sign, at }) => `${sign} ${at}`);

/** It swells once it has begun, so that the noise does not follow; then it rings on, a tenth less each frame, until it is closed for that. */
const RINGING = [...run(1, 30), ...run(100, 10), ...run(1e8, 20), ...swelling(0.9, 60, 1e8)];

test('what only rings on after a word does not begin another, though it stands far above the noise', () => {
  const [began, ended, ...more] = told([...RINGING, ...swelling(0.9, 60, RINGING.at(-1))]);
  expect([began?.sign, ended?.sign, more]).toEqual(['began', 'ended', []]);
  expect(ended?.at).toBeLessThan(RINGING.length);
});

test('what rang on and then stays as loud for 15 frames is a sound of its own', () => {
  const level = RINGING.at(-1) ?? 0;
  expect(signs([...RINGING, ...run(level, 13)])).toHaveLength(2);
  expect(signs([...RINGING, ...run(level, 14)]).slice(2)).toEqual([`began ${RINGING.length + 13}`]);
});

test('what rises out of the ringing begins once five frames are louder than five were ten before', () => {
  const level = RINGING.at(-1) ?? 0;
  const after = (by: number) => signs([...RINGING, ...swelling(0.9, 3, level), ...run(by * level, 12)])[2];
  expect([after(1), after(1.5), after(3), after(10)]).toMatchSnapshot();
});

test('nothing begins before the 25th frame', () => {
  expect(signs([...run(1, 14), ...swelling(4, 11)])).toEqual(['began 24']);
  expect(signs([...run(1, 14), ...swelling(4, 10)])).toEqual([]);
});

test('what sounded in the first frames still belongs to the word that began then', () => {
  const early = run([1, 100], 10);
  const [, ended] = told([...run([1, 1], 2), ...early, ...run([1, 1], 5), ...swelling(2, 12, 4).map((power) => [power, 1]), ...run([1, 1], 40)]);
  expect(ended).toMatchObject({ sign: 'ended', begins: 2, loudest: { stretch: { begins: 0 } } });
});

test('evidence in the very first frame that is looked back upon is where it begins', () => {
  const [began, ended] = told([...run(1, 40), 100, ...run(1, 22), ...run(100, 20), ...run(1, 40)]);
  expect(began?.at).toBe(68);
  expect(ended).toMatchObject({ sign: 'ended', begins: 40 });
});

test('of a sound that grows and does not end, the last half of each three seconds is taken as the noise', () => {
  const endpoints = new Endpoints();
  const all = told([...run(1, 30), ...run(50, 270), ...run(5000, 307)], endpoints);
  expect(all.map(({ sign }) => sign)).toEqual(['began']);
  expect(endpoints.noisePower / 2).toBeCloseTo(7500, 0);
});

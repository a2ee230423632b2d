// Contract of where a word begins and ends, frame by frame: noise is 1 in each of four bands, and what is loud stands far above it.
import { describe, expect, test } from 'vitest';
import { Endpoints, type Sounding } from '../../../src/voice/ownWords/endpoints.ts';

const frame = (power: number) => new Float32Array(4).fill(power);
const run = (power: number, count: number): number[] => Array.from({ length: count }, () => power);
const WARM = run(1, 30);

/** What became of the frames, each with the number of the frame at which it was told, from 0. */
function told(powers: readonly number[], endpoints = new Endpoints()): (Sounding & { readonly at: number })[] {
  return powers.flatMap((power, at) => {
    const sounding = endpoints.push(frame(power));
    return sounding === null ? [] : [{ ...sounding, at }];
  });
}
const signs = (...powers: readonly (readonly number[])[]) => told(powers.flat()).map(({ sign, at }) => `${sign} ${at}`);
const noiseAfter = (...powers: readonly (readonly number[])[]): number => {
  const endpoints = new Endpoints();
  told(powers.flat(), endpoints);
  return endpoints.noisePower / 4;
};

describe('a stretch', () => {
  test('begins with the sixth loud frame of nine', () => {
    expect(signs(WARM, run(100, 5), run(1, 40))).toEqual([]);
    expect(signs(WARM, run(100, 6))).toEqual(['began 35']);
    expect(signs(WARM, run(100, 5), run(1, 3), run(100, 1))).toEqual(['began 38']);
    expect(signs(WARM, run(100, 5), run(1, 4), run(100, 1))).toEqual([]);
  });

  test('ends with the thirtieth quiet frame', () => {
    expect(signs(WARM, run(100, 20), run(1, 30))).toEqual(['began 35', 'ended 79']);
    expect(signs(WARM, run(100, 20), run(1, 29))).toEqual(['began 35']);
    expect(signs(WARM, run(100, 20), run(1, 29), run(100, 1), run(1, 30))).toEqual(['began 35', 'ended 109']);
  });

  test('is told with the frame of the first evidence, its word and the noise around it', () => {
    const ended = told([...WARM, ...run(100, 20), ...run(1, 30)])[1];
    expect(ended).toMatchObject({ begins: 30, pieces: [{ long: false, stretch: { begins: 30 - 12, ends: 50 + 12 } }] });
    expect(ended?.sign === 'ended' ? ended.loudest.stretch.frames.map(([power]) => power) : []).toEqual([...run(1, 12), ...run(100, 20), ...run(1, 12)]);
    expect(ended?.sign === 'ended' ? [...ended.loudest.stretch.noise] : []).toEqual(run(100 - 99 * 0.997 ** 6, 4).map((power) => expect.closeTo(power, 4)));
  });

  test('too short for a word is slight', () => {
    expect(signs(WARM, run(100, 8), run(1, 30))).toEqual(['began 35', 'slight 67']);
    expect(signs(WARM, run(100, 9), run(1, 30))).toEqual(['began 35', 'ended 68']);
  });

  test('may follow another at once', () => {
    expect(signs(WARM, run(100, 20), run(1, 30), run(100, 6))).toEqual(['began 35', 'ended 79', 'began 85']);
  });

  test('does not begin where what was there before only rings on', () => {
    const falling = Array.from({ length: 40 }, (_, t) => 400 * 0.9 ** t);
    const endpoints = new Endpoints();
    expect(told([...WARM, ...run(400, 20), ...run(1, 30)], endpoints)).toHaveLength(2);
    expect(told([...run(1, 2), ...falling], endpoints).map(({ sign, at }) => [sign, at])).toEqual([['began', 7]]);
  });
});

describe('quiet', () => {
  // It begins softly, so that the noise stays near 1: 5 for six frames moves it to 1.071. A thousandth of a peak of 10,000 is 10 over half again that.
  test('is also an echo of less than a thousandth of the peak, which is clearly louder than the noise', () => {
    const after = (power: number) => signs(WARM, run(5, 6), run(10_000, 20), run(power, 35)).map((sign) => sign.split(' ')[0]);
    expect(after(11.5)).toEqual(['began', 'ended']);
    expect(after(11.8)).toEqual(['began']);
  });

  test('comes while a room rings on, falling by 3 dB in a tenth of a second once it is 10 dB under the peak', () => {
    const ringing = (share: number) => Array.from({ length: 60 }, (_, t) => 10_000 * share ** t);
    const endOf = (share: number): number => told([...WARM, ...run(10_000, 20), ...ringing(share)]).find(({ sign }) => sign === 'ended')?.at ?? Infinity;
    // By a fifth a frame it is 10 dB down, on the mean of five, with its thirteenth frame; then thirty more.
    expect(endOf(0.8)).toBe(50 + 12 + 29);
    // By a twentieth a frame it falls by 40 % in ten, which is less than 3 dB.
    expect(endOf(0.95)).toBe(Infinity);
  });
});

describe('the noise', () => {
  test('is the first frame, then settles on the mean of those that follow', () => {
    expect(noiseAfter([1])).toBe(1);
    expect(noiseAfter([1, 2])).toBeCloseTo(1 + 1 / 3, 6);
    expect(noiseAfter([1, 2, 2])).toBeCloseTo(1.5, 6);
    // From the eleventh frame on by a twelfth.
    expect(noiseAfter(run(1, 20), [2])).toBeCloseTo(1 + 1 / 12, 6);
    expect(noiseAfter(run(1, 23), [2])).toBeCloseTo(1 + 1 / 12, 6);
  });

  test('then follows by a twenty-fifth a frame', () => {
    expect(noiseAfter(run(1, 24), [1.1])).toBeCloseTo(1.004, 6);
    expect(noiseAfter(run(1, 24), [0.9])).toBeCloseTo(0.996, 6);
  });

  test('hardly rises in speech, not at all inside a stretch, and falls there by a fiftieth a frame', () => {
    expect(noiseAfter(WARM, [101])).toBeCloseTo(1.3, 5);
    const before = noiseAfter(WARM, run(100, 6));
    expect(noiseAfter(WARM, run(100, 16))).toBe(before);
    expect(noiseAfter(WARM, run(100, 6), [0])).toBeCloseTo(0.98 * before, 5);
  });

  test('that goes on for three seconds is a new one: one and a half times its lower third', () => {
    const endpoints = new Endpoints();
    const all = told([...WARM, ...run(100, 320)], endpoints);
    expect(all.map(({ sign }) => sign)).toEqual(['began', 'ended']);
    expect(all[1]).toMatchObject({ pieces: [{ long: true }] });
    // It began with 29 frames at hand, so that the 300th is the 271st after that; thirty more are quiet.
    expect(all[1]?.at).toBe(35 + 271 + 30);
    expect(noiseAfter(WARM, run(100, 6), run(100, 271))).toBeCloseTo(150, 4);
  });
});

test('another knows the noise and counts on, and nothing that is open', () => {
  const endpoints = new Endpoints();
  told([...WARM, ...run(100, 10)], endpoints);
  const other = endpoints.another();
  expect([other.heard, other.noisePower]).toEqual([40, endpoints.noisePower]);
  expect(told(run(100, 6), other).map(({ sign, at }) => [sign, at])).toEqual([['began', 5]]);
  expect(endpoints.heard).toBe(40);
});

// Contract of the bands: one bank for every microphone, a frame each 10 ms whatever the rate, and the power where the sound has it.
import { expect, test } from 'vitest';
import { bandsAt, Frames } from '../../../src/voice/ownWords/bands.ts';
import { spectrumMeter } from '../../../src/voice/ownWords/spectrum.ts';

const sine = (rate: number, hertz: number, samples: number) => Float32Array.from({ length: samples }, (_, t) => Math.sin((2 * Math.PI * hertz * t) / rate));

test.each([
  [48_000, 28],
  [16_000, 28],
  // 0.48 of 8,000 Hz is 3,840 Hz, 2,107 mel; from 178.4 mel in steps of 87.04 that is corner 22.2, and a band ends two corners after it begins.
  [8_000, 21],
])('of the bank, %i samples a second fill %i', (rate, bands) => {
  expect(bandsAt(rate)).toBe(bands);
  expect(new Frames(rate).bands).toBe(bands);
});

test.each([
  // 25 ms, then one each 10 ms; 44,100 Hz has 441 samples in 10 ms, 22,050 Hz 220.5, 11,025 Hz 110.25.
  [16_000, 399, 0],
  [16_000, 400, 1],
  [16_000, 400 + 9 * 160 - 1, 9],
  [16_000, 400 + 9 * 160, 10],
  [44_100, 1103 + 9 * 441, 10],
  [22_050, 551 + 2 * 220.5 * 50, 101],
  [22_050, 551 + 2 * 220.5 * 50 - 1, 100],
  [11_025, 276 + 4 * 110.25 * 25, 101],
  [11_025, 276 + 4 * 110.25 * 25 - 1, 100],
])('at %i samples a second %i samples give %i frames, in one piece or in many', (rate, samples, count) => {
  const sound = sine(rate, 300, samples);
  const whole = new Frames(rate).push(sound);
  expect(whole).toHaveLength(count);
  const frames = new Frames(rate);
  const pieces = Array.from({ length: Math.ceil(samples / 37) }, (_, at) => frames.push(sound.subarray(37 * at, 37 * (at + 1)))).flat();
  expect(pieces).toEqual(whole);
});

test('a tone of 1,000 Hz lies in its two bands, with half its square and the gain of the treble there', () => {
  // 1,000 mel is 9.44 corners up: 0.56 of it in band 8, 0.44 in band 9. The gain is 1.9025 - 1.9 cos(pi / 8) = 0.14714.
  // Half the square lies on either side of the spectrum alike, and one side is measured.
  const [frame] = new Frames(16_000).push(sine(16_000, 1000, 400));
  const powers = [...(frame ?? [])];
  const total = powers.reduce((sum, power) => sum + power, 0);
  expect(total).toBeCloseTo(0.25 * 0.14714, 3);
  expect(powers.indexOf(Math.max(...powers))).toBe(8);
  expect((powers[8] ?? 0) / total).toBeCloseTo(0.56, 1);
  expect((powers[9] ?? 0) / total).toBeCloseTo(0.44, 1);
});

test('digital silence has a power, so that it has a logarithm', () => {
  const [frame] = new Frames(16_000).push(new Float32Array(400));
  for (const power of frame ?? []) expect(power).toBeCloseTo(1e-13, 20);
});

test('the spectrum is that of the slow transform, under a window of 0.08 to 1, per hertz', () => {
  const stretch = Float32Array.of(3, -1, 4, 1, -5, 9);
  const { size, measure } = spectrumMeter(6, 1000);
  expect(size).toBe(8);
  // 0.54 - 0.46 cos(2 pi i / 5)
  const window = [0.08, 0.397852, 0.912148, 0.912148, 0.397852, 0.08];
  const energy = window.reduce((sum, w) => sum + w * w, 0);
  const power = measure(stretch);
  expect(power).toHaveLength(5);
  for (let k = 0; k <= 4; k++) {
    let [re, im] = [0, 0];
    for (const [i, w] of window.entries()) {
      re += w * (stretch[i] ?? 0) * Math.cos((2 * Math.PI * k * i) / 8);
      im += w * (stretch[i] ?? 0) * Math.sin((2 * Math.PI * k * i) / 8);
    }
    expect(power[k]).toBeCloseTo((re * re + im * im) / (1000 * energy), 6);
  }
});

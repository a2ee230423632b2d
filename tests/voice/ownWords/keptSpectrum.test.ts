// The numbers from samples to shapes, kept to seven digits: the spectrum, the bands, the cepstra.
import { expect, test } from 'vitest';
import { seededRandom } from '../../../src/practice/random.ts';
import { bandsAt, Frames } from '../../../src/voice/ownWords/bands.ts';
import { shapeOf } from '../../../src/voice/ownWords/cepstra.ts';
import { spectrumMeter } from '../../../src/voice/ownWords/spectrum.ts';
import { kept } from '../../kept/kept.ts';
import { summed } from '../../kept/summed.ts';
import { framesBy, loudnessBy } from './keptStuff.ts';

function samples(seed: number, length: number): Float32Array {
  const random = seededRandom(seed);
  return Float32Array.from({ length }, (_, i) => 0.3 * (random() - 0.5) + 0.2 * Math.sin(i / (3 + seed)));
}

test('the power of a stretch at each frequency', () => {
  const told = () =>
    [2, 3, 4, 5, 8, 9, 15, 16, 17, 200, 276, 400].map((length) => {
      const { size, measure } = spectrumMeter(length, 8000 + length);
      const first = measure(samples(length, length));
      return [size, first.length, summed(first), summed(measure(samples(length + 1, length))), ...first.slice(0, 3), ...first.slice(-2)];
    });
  expect(kept(told)).toMatchSnapshot();
});

test('how many bands a sample rate fills', () => {
  expect(kept(() => Array.from({ length: 110 }, (_, at) => bandsAt(200 * at)))).toMatchSnapshot();
});

test('the frames of a stream, in whatever pieces it comes', () => {
  const told = () =>
    [2000, 8000, 11_025, 16_000, 22_050, 44_100].map((rate) => {
      const frames = new Frames(rate);
      const sound = samples(rate % 89, Math.round(0.21 * rate));
      const random = seededRandom(rate);
      const counts: number[] = [];
      const out: Float32Array[] = [];
      for (let at = 0; at < sound.length;) {
        const taken = random() < 0.2 ? 0 : Math.ceil(0.03 * rate * random());
        const cut = frames.push(sound.subarray(at, at + taken));
        counts.push(cut.length);
        out.push(...cut);
        at += taken;
      }
      return [frames.bands, summed(counts), ...out.map(summed), ...(out[2] ?? [])];
    });
  expect(kept(told)).toMatchSnapshot();
});

test('the shape of frames', () => {
  const told = () =>
    [8, 20, 28].map((bands) =>
      [0, 1, 2, 3, 4, 5, 7, 8, 40].map((length) => {
        const { values, width, length: rows } = shapeOf(framesBy(bands + length, loudnessBy(length, 8).slice(0, length), bands));
        return [rows, width, summed(values), ...values.slice(-24)];
      }),
    );
  expect(kept(told)).toMatchSnapshot();
});

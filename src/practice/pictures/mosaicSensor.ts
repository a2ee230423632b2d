// A sensor behind a mosaic of colour filters: each pixel counts electrons of one colour, with the noise of light (a Poisson count,
// drawn as a normal one of the same variance) and of reading; the colours between are filled in bilinearly (B. E. Bayer, US patent
// 3,971,065, 1976; bilinear filling in: common practice).
import { normal, type Random } from '../random.ts';
import type { Sensel } from './shot.ts';

/** What red and blue are multiplied by to make grey grey, by daylight (common practice, no source). */
const GAIN = { red: 1.9, green: 1, blue: 1.6 } as const;
type Colour = keyof typeof GAIN;

export interface Colours {
  readonly red: Float32Array;
  readonly green: Float32Array;
  readonly blue: Float32Array;
}

export function exposeMosaic(light: Float32Array, { width, height, fullWell, readNoise }: Sensel, random: Random): Colours {
  const raw = new Float32Array(light.length);
  const draw = noiseFrom(random);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const gain = GAIN[colourAt(x, y)];
      const electrons = (light[y * width + x]! * fullWell) / gain;
      const noisy = electrons + Math.sqrt(electrons + readNoise ** 2) * draw();
      raw[y * width + x] = (Math.min(noisy, fullWell) / fullWell) * gain;
    }
  }
  const filled = (colour: Colour) => fillIn(raw, width, height, colour);
  return { red: filled('red'), green: filled('green'), blue: filled('blue') };
}

const colourAt = (x: number, y: number): Colour => (y % 2 === 0 ? (x % 2 === 0 ? 'red' : 'green') : x % 2 === 0 ? 'green' : 'blue');

/** Normal numbers from a table that is drawn once and read from places of chance. */
function noiseFrom(random: Random): () => number {
  const table = Float32Array.from({ length: 65_537 }, () => normal(random, 0, 1));
  let at = Math.floor(random() * table.length);
  let stride = 1 + Math.floor(random() * 1000);
  return () => {
    at += stride;
    if (at >= table.length) {
      at -= table.length;
      stride = 1 + Math.floor(random() * 1000);
    }
    return table[at]!;
  };
}

/** The mean of the neighbours of that colour, level and upright where there are any, else over the corners. */
function fillIn(raw: Float32Array, width: number, height: number, colour: Colour): Float32Array {
  const out = new Float32Array(raw.length);
  const at = (x: number, y: number) => raw[mirrored(y, height) * width + mirrored(x, width)]!;
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const here = colourAt(x, y);
      const index = y * width + x;
      if (here === colour) out[index] = raw[index]!;
      else if (colour === 'green') out[index] = (at(x - 1, y) + at(x + 1, y) + at(x, y - 1) + at(x, y + 1)) / 4;
      else if (here !== 'green') out[index] = (at(x - 1, y - 1) + at(x + 1, y - 1) + at(x - 1, y + 1) + at(x + 1, y + 1)) / 4;
      else if ((colour === 'red') === (y % 2 === 0)) out[index] = (at(x - 1, y) + at(x + 1, y)) / 2;
      else out[index] = (at(x, y - 1) + at(x, y + 1)) / 2;
    }
  }
  return out;
}

/** Past the border, the neighbour of the same colour inside. */
const mirrored = (index: number, length: number): number => (index < 0 ? -index : index >= length ? 2 * length - 2 - index : index);

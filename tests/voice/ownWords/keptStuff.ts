// Seeded sounds and shapes for the tests that keep the numbers of own words: chance by its seed, and the sums that stand for long rows.
import { seededRandom } from '../../../src/practice/random.ts';
import type { SoundFrame } from '../../../src/voice/ownWords/bands.ts';
import type { Cepstra } from '../../../src/voice/ownWords/cepstra.ts';

/** A shape of numbers around nought; `whole`: of small whole numbers, so that many ways are equally long. */
export function shapeBy(seed: number, length: number, width: number, whole = false): Cepstra {
  const random = seededRandom(seed);
  const values = Float32Array.from({ length: length * width }, () => (whole ? Math.floor(3 * random()) : 4 * random() - 2));
  return { values, length, width };
}

/** Frames as loud as told, each band by chance around that. */
export function framesBy(seed: number, loud: readonly number[], bands: number): SoundFrame[] {
  const random = seededRandom(seed);
  return loud.map((power) => Float32Array.from({ length: bands }, () => power * (0.2 + 1.6 * random())));
}

/** So many frames of each loudness in turn: `[[1, 30], [100, 12]]`. */
export const runs = (...parts: readonly (readonly [power: number, frames: number])[]): number[] =>
  parts.flatMap(([power, frames]) => Array.from({ length: frames }, () => power));

/** Loudness like that of speech among quiet: bursts, pauses, and what rings on, by chance. */
export function loudnessBy(seed: number, parts: number, quiet = 1): number[] {
  const random = seededRandom(seed);
  const out: number[] = [];
  for (let part = 0; part < parts; part++) {
    const power = quiet * 10 ** (4 * random());
    const frames = 1 + Math.floor(25 * random());
    const falls = random() < 0.4 ? 0.75 + 0.2 * random() : 1;
    for (let t = 0; t < frames; t++) out.push(Math.max(quiet, power * falls ** t));
    if (random() < 0.5) out.push(...runs([quiet, Math.floor(45 * random())]));
  }
  return out;
}

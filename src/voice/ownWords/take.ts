// One spoken take of a word as it is kept: the sound in each band over time and the noise there was, in half decibels,
// so that it is small, readable in a backup, and nothing can be played from it.
import * as v from 'valibot';
import type { SoundFrame } from './bands.ts';
import type { Stretch } from './pieces.ts';

const Level = v.pipe(v.number(), v.integer(), v.minValue(-400), v.maxValue(200));

/** Half decibels over full scale; `frames` row by row, `noise.length` to a row. */
export const Take = v.pipe(
  v.object({
    word: v.pipe(v.string(), v.minLength(1), v.maxLength(80)),
    noise: v.pipe(v.array(Level), v.minLength(8), v.maxLength(64)),
    frames: v.pipe(v.array(Level), v.minLength(1), v.maxLength(20_000)),
    /** Not taught, but said in a sweep and confirmed. */
    learned: v.exactOptional(v.literal(true)),
  }),
  v.check(({ noise, frames }) => frames.length % noise.length === 0, 'A take must have whole frames.'),
  v.check(({ noise, frames }) => frames.length / noise.length >= 8, 'A take must be at least 80 ms long.'),
);
export type Take = v.InferOutput<typeof Take>;

/** Everything the person taught, as it is stored and backed up. */
export const OwnWords = v.object({
  version: v.literal(1),
  language: v.pipe(v.string(), v.maxLength(35)),
  takes: v.pipe(v.array(Take), v.maxLength(1000)),
});
export type OwnWords = v.InferOutput<typeof OwnWords>;

export const ownWordsOf = (language: string, takes: readonly Take[]): OwnWords => ({ version: 1, language, takes: [...takes] });

const toLevel = (power: number): number => Math.round(20 * Math.log10(power));
const toPower = (level: number): number => 10 ** (level / 20);

export function takeOf(word: string, { frames, noise }: Pick<Stretch, 'frames' | 'noise'>): Take {
  return {
    word,
    noise: Array.from(noise, toLevel),
    frames: frames.flatMap((frame) => Array.from(frame, toLevel)),
  };
}

export function soundOf({ noise, frames }: Take): { frames: SoundFrame[]; noise: SoundFrame } {
  const bands = noise.length;
  return {
    noise: Float32Array.from(noise, toPower),
    frames: Array.from({ length: frames.length / bands }, (_, t) => Float32Array.from(frames.slice(t * bands, (t + 1) * bands), toPower)),
  };
}

// Tells talk from the other sounds beside a camera: the loudness of talk rises and falls with its syllables, and its power
// lies in many bands. A motor is steady, a beep lies in one or two bands, and a click is over soon. One syllable is no talk by
// itself; beside a word it is, and lasts longer than a click, with power where a voice has it.
import type { Stretch } from './pieces.ts';
import { MARGIN } from './pieces.ts';

/** Frames without the margins: shorter is one syllable, a click or a cough, and no talk by itself. */
const LEAST = 36;
/** Decibels by which the loudness of talk scatters. Measured: nine motors in ten scatter less, three phrases in four more. */
const UNEVEN = 2.6;
/** The share of all power in the two strongest bands of a beep. Measured: beeps 0.98, talk at most 0.8. */
const TONE = 0.9;
/** Frames within 10 dB of the loudest: a click has fewer. */
const SYLLABLE = 6;
/** Decibels by which the loudness of a syllable scatters. Measured: four motors in five scatter less, nine syllables in ten more. */
const RISES_AND_FALLS = 2.1;
/** The bands up to 950 Hz, where the first resonance of every vowel lies, and the share of a syllable's power in them at least. */
const VOICE_BANDS = 8;
const VOICED = 0.06;
/** Loudness is followed between the first and the last moment within 10 dB of the loudest. */
const NEAR = 0.1;
/** Decibels below the mean that count in full: pauses are no more than that. */
const DEEPEST = 20;

export const isTalk = (stretch: Stretch): boolean =>
  stretch.frames.length - 2 * MARGIN >= LEAST && !isTone(stretch) && unevenness(loudnessOf(stretch)) >= UNEVEN;

export function isTone({ frames, noise }: Stretch): boolean {
  const bands = bandsOf(frames, noise);
  const all = total(bands);
  const [first = 0, second = 0] = bands.sort((a, b) => b - a);
  return first + second > TONE * all;
}

/** At least one syllable, as far as loudness and bands tell: what stands close beside it is part of talk. */
export function isSyllable(stretch: Stretch): boolean {
  const { frames, noise } = stretch;
  const inside = frames.slice(MARGIN, -MARGIN);
  const powers = inside.map((frame) => total(bandsOf([frame], noise)));
  const loud = inside.filter((_, t) => powers[t]! > NEAR * Math.max(...powers));
  if (loud.length < SYLLABLE || isTone(stretch) || unevenness(loudnessOf(stretch)) < RISES_AND_FALLS) return false;
  const bands = bandsOf(loud, noise);
  return total(bands.slice(0, VOICE_BANDS)) >= VOICED * total(bands);
}

/** The power clearly above the noise, band by band. */
const bandsOf = (frames: Stretch['frames'], noise: Stretch['noise']): number[] =>
  Array.from(noise, (floor, b) => frames.reduce((sum, frame) => sum + Math.max(0, frame[b]! - 1.5 * floor), 0));

const total = (powers: readonly number[]): number => powers.reduce((sum, power) => sum + power, 0);

function loudnessOf({ frames, noise }: Stretch): number[] {
  const powers = frames.map((frame) => total(bandsOf([frame], noise)));
  const near = (power: number): boolean => power > NEAR * Math.max(...powers);
  const decibels = powers.slice(powers.findIndex(near), powers.findLastIndex(near) + 1).map((power) => 10 * Math.log10(Math.max(power, 1e-20)));
  return decibels.map((value, t) => ((decibels[t - 1] ?? value) + value + (decibels[t + 1] ?? value)) / 3);
}

function unevenness(decibels: readonly number[]): number {
  const middle = decibels.reduce((sum, value) => sum + value, 0) / Math.max(1, decibels.length);
  const squares = decibels.reduce((sum, value) => sum + Math.min(DEEPEST ** 2, (value - middle) ** 2), 0);
  return Math.sqrt(squares / Math.max(1, decibels.length));
}

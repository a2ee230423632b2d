// Takes are recorded in one noise and heard in another: what is left of a take above its own noise is brought to the
// level and into the noise heard now before the two are compared (parallel model combination, Gales and Young 1996).
import type { SoundFrame } from './bands.ts';
import { shapeOf, type Cepstra } from './cepstra.ts';

/** A word without its noise. */
export interface SpeechAlone {
  readonly frames: readonly SoundFrame[];
  /** The power of each frame, and their mean over those that carry the word. */
  readonly powers: readonly number[];
  readonly level: number;
}

/** What was heard now, and in which noise. */
export interface Scene {
  readonly shape: Cepstra;
  readonly level: number;
  readonly noise: SoundFrame;
  readonly floor: number;
  /** The rows that carry the word: what lies beside it is noise in every word. */
  readonly rows: readonly number[];
  /** Decibels of the word over the noise. */
  readonly clearance: number;
}

/** Frames within 20 dB of the loudest carry the word. */
const CARRIES = 0.01;
/** A row of the word is within 25 dB of its level, and no more than 3 dB under the noise. */
const FAINT = 0.003;
const DROWNED = 0.5;
/** What is left of a band that the noise covers. */
const LEAST = 0.02;
/** Some noise on top of the noise evens out its chance ups and downs. */
const EXTRA = 0.5;
/** A floor under everything, so that echoes in a quiet room do not count. */
const FLOOR = 0.04;

const sum = (frame: SoundFrame): number => frame.reduce((total, power) => total + power, 0);

function levelOf(powers: readonly number[]): number {
  const loudest = Math.max(...powers);
  const carrying = powers.filter((power) => power > loudest * CARRIES);
  return carrying.reduce((total, power) => total + power, 0) / Math.max(1, carrying.length);
}

export function speechOf(frames: readonly SoundFrame[], noise: SoundFrame): SpeechAlone {
  const clean = frames.map((frame) => frame.map((power, b) => Math.max(power - noise[b]!, LEAST * power)));
  const powers = clean.map(sum);
  return { frames: clean, powers, level: levelOf(powers) };
}

export function sceneOf(frames: readonly SoundFrame[], noise: SoundFrame): Scene {
  const over = frames.map((frame) => frame.reduce((total, power, b) => total + Math.max(0, power - noise[b]!), 0));
  const level = Math.max(1e-12, levelOf(over));
  const floor = (FLOOR * level) / noise.length;
  const rows = over.flatMap((power, t) => (power > leastOf(level, noise) ? [t] : []));
  const shape = shapeOf(frames.map((frame) => frame.map((power, b) => power + EXTRA * noise[b]! + floor)));
  return { shape, level, noise, floor, rows, clearance: 10 * Math.log10(level / Math.max(1e-20, sum(noise))) };
}

/** The power from which a row carries the word. */
const leastOf = (level: number, noise: SoundFrame): number => Math.max(FAINT * level, DROWNED * sum(noise));

/** How many rows of the take would carry the word in this scene. */
export function carryingIn({ powers, level }: SpeechAlone, scene: Scene): number {
  const least = leastOf(scene.level, scene.noise);
  return powers.filter((power) => (power * scene.level) / level > least).length;
}

/** The take as it would sound in this scene. */
export function inScene(speech: SpeechAlone, scene: Scene): Cepstra {
  const gain = scene.level / speech.level;
  const { noise, floor } = scene;
  return shapeOf(speech.frames.map((frame) => frame.map((power, b) => gain * power + (1 + EXTRA) * noise[b]! + floor)));
}

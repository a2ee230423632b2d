// How far a sound is from a word, over the takes of it: each take by itself, and row by row the takes that are nearest
// there. The second tells another word that only in one sound is another; the first keeps the takes whole.
import { align } from './alignment.ts';
import type { Cepstra } from './cepstra.ts';
import { carryingIn, inScene, type Scene, type SpeechAlone } from './inNoise.ts';
import type { Measure } from './scatter.ts';

/** Distances in the unit of the measure. */
export interface WordDistance {
  readonly word: string;
  /** Along the way, the mean over the nearest takes. */
  readonly apart: number;
  /** The share of the way on which one of the two stands still. */
  readonly warped: number;
  /** Where the word is loud, row by row the two nearest takes: the mean, and the mean over the worst 160 ms. */
  readonly closest: number;
  readonly worst: number;
  /** For how many rows it carries sound, against the takes. */
  readonly carrying: number;
}

/** So many of a word's takes, the nearest, stand for it whole, and row by row. */
const NEAREST = 3;
const NEAREST_THERE = 2;
const WORST = 16;

/** `takes`: at least one. */
export function distanceTo(word: string, takes: readonly SpeechAlone[], scene: Scene, measured: Measure): WordDistance {
  const shape: Cepstra = measured(scene.shape);
  const all = takes.map((speech) => align(shape, measured(inScene(speech, scene)))).sort((a, b) => a.apart - b.apart);
  const near = all.slice(0, NEAREST);
  const there = scene.rows.flatMap((row) => nearestThere(all.map(({ along }) => along[row]!)) ?? []);
  const apart = mean(near.map((one) => one.apart));
  const warped = mean(near.map((one) => one.warped));
  const carrying = Math.max(1, scene.rows.length) / Math.max(1, mean(takes.map((speech) => carryingIn(speech, scene))));
  // Of a sound that nowhere stands out of the noise, nothing more is known.
  const [closest, worst] = there.length === 0 ? [apart, apart] : [mean(there), worstOf(there)];
  return { word, apart, warped, closest, worst, carrying };
}

/** Null where every way leaves the row out. */
function nearestThere(distances: readonly number[]): number | null {
  const met = distances.filter(Number.isFinite).sort((a, b) => a - b);
  return met.length === 0 ? null : mean(met.slice(0, NEAREST_THERE));
}

function worstOf(there: readonly number[]): number {
  let worst = 0;
  let window = 0;
  for (let t = 0; t < there.length; t++) {
    window += there[t]! - (there[t - WORST] ?? 0);
    if (t >= WORST - 1) worst = Math.max(worst, window / WORST);
  }
  return worst > 0 ? worst : mean(there);
}

export const mean = (list: readonly number[]): number => list.reduce((total, value) => total + value, 0) / Math.max(1, list.length);

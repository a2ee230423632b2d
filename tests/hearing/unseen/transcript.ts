// What a recogniser may write down, with what was meant and the moment in which it was said: the shape of the lists beside this file.
import type { Word } from '../../../src/sweep/inputs.ts';
import type { ArrowWord, LightWord } from '../../../src/sweep/meaning.ts';

/** `set-up` is the walk, which is talked to in place of a sweep. */
export const MOMENTS = ['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'finished', 'set-up'] as const;
export type Moment = (typeof MOMENTS)[number];

/** A word, a light with its arrows, a correction, or the beginning of the name of a lens: one sought in the logbook, or the next one. */
export type Means = Exclude<Word, 'set'> | readonly [LightWord, ArrowWord] | number | { readonly sought: string } | { readonly nextLens: string };

export interface Transcript {
  readonly moment: Moment;
  readonly means: Means;
  readonly heard: string;
}

export interface Unseen {
  /** The names of the lenses in the logbook, each with its focal length. */
  readonly lenses: readonly (readonly [name: string, focalLength: number])[];
  readonly told: readonly Transcript[];
  /** What people say to each other, by telephone or on the radio. */
  readonly room: readonly string[];
}

/** Several transcripts of one thing, parted by strokes. */
export const said = (moment: Moment, means: Means, ...lines: readonly string[]): Transcript[] => parts(lines).map((heard) => ({ moment, means, heard }));

export const parts = (lines: readonly string[]): string[] => lines.flatMap((line) => line.split(' / '));

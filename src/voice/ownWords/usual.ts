// What is usual for a word said again, out of its takes: each is compared with the others as if it were heard now. Half of
// it is that of all words, as five takes are few.
import { mean, type WordDistance } from './wordDistance.ts';

export interface Usual {
  readonly apart: number;
  readonly warped: number;
  readonly closest: number;
  readonly worst: number;
  /** Frames. */
  readonly length: number;
}

const PARTS = ['apart', 'warped', 'closest', 'worst'] as const;

/** `again`: the takes of each word against its other takes, none where there is one only. `lengths`: frames of each take. */
export function usualOf(again: ReadonlyMap<string, readonly WordDistance[]>, lengths: ReadonlyMap<string, readonly number[]>): ReadonlyMap<string, Usual> {
  const all = [...again.values()].flat();
  const blended = (own: readonly WordDistance[], part: (typeof PARTS)[number]): number => {
    const general = all.length > 0 ? mean(all.map((one) => one[part])) : 1;
    return own.length > 0 ? (general + mean(own.map((one) => one[part]))) / 2 : general;
  };
  return new Map(
    [...lengths].map(([word, frames]) => {
      const own = again.get(word) ?? [];
      const [apart, warped, closest, worst] = PARTS.map((part) => blended(own, part)) as [number, number, number, number];
      return [word, { apart, warped, closest, worst, length: mean(frames) }];
    }),
  );
}

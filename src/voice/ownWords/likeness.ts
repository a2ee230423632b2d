// What comparing a sound with all words told of the nearest: against what is usual for that word, and against the other
// words. A room that rings, or a noise, puts every word further away; how much nearer one is than the others stays.
import type { Usual } from './usual.ts';
import { mean, type WordDistance } from './wordDistance.ts';

/** Natural logarithms of ratios, but for `warped`. */
export interface Likeness {
  /** Against what is usual for the word: whole, row by row, its length. */
  readonly apart: number;
  readonly closest: number;
  readonly length: number;
  /** How long it carries sound, against the takes. */
  readonly carrying: number;
  /** The share of standing still beyond the usual. */
  readonly warped: number;
  /** Against the next nearest word: in all, row by row, and over the worst 160 ms. */
  readonly lead: number;
  readonly closestLead: number;
  readonly worstLead: number;
  /** Against the mean of the other words. */
  readonly ahead: number;
}

/** A word that scatters much by itself may be further away: by half of what it scatters more, on the logarithm. */
const ALLOWED = 0.5;
/** Row by row counts half as much as whole. */
const ROWS = 0.5;
/** With one word taught there is nothing to be nearer than: as far as words usually are. Measured on digits. */
const ALONE = -0.3;

type Part = 'apart' | 'closest' | 'worst';

/** The words nearest first, and how near the first is; null when there is none. `length`: frames. */
export function nearestOf(
  all: readonly WordDistance[],
  usual: ReadonlyMap<string, Usual>,
  length: number,
): { readonly words: readonly WordDistance[]; readonly likeness: Likeness } | null {
  const of = (one: WordDistance, part: Part): number => Math.log(one[part]) - ALLOWED * Math.log(usual.get(one.word)![part]);
  const far = (one: WordDistance): number => (of(one, 'apart') + ROWS * of(one, 'closest')) / (1 + ROWS);
  const words = [...all].sort((a, b) => far(a) - far(b));
  const [first, ...others] = words;
  if (first === undefined) return null;
  const own = usual.get(first.word)!;
  const before = (distance: (one: WordDistance) => number): number =>
    others.length === 0 ? ALONE : distance(first) - Math.min(...others.map((one) => distance(one)));
  return {
    words,
    likeness: {
      apart: Math.log(first.apart / own.apart),
      closest: Math.log(first.closest / own.closest),
      length: Math.log(length / own.length),
      carrying: Math.log(first.carrying),
      warped: first.warped - own.warped,
      lead: before(far),
      closestLead: before((one) => of(one, 'closest')),
      worstLead: before((one) => of(one, 'worst')),
      ahead: others.length === 0 ? ALONE : far(first) - mean(others.map(far)),
    },
  };
}

// How hard the training is: a ladder of levels, climbed by the rule "two right in a row: one level harder; one wrong: one
// level easier", which settles where 70.7 % are told right (Levitt 1971, J. Acoust. Soc. Am. 49:467). It needs no model of
// the person and can be told in a sentence. Only lights that come late or flicker move it: a steady or a dark one looks
// the same on every level.

import { LAST_LEVEL } from './levels.ts';

/** What a level asks of the eye: seconds before a late light comes on, and for which a flickering one goes out. */
export interface LadderLevel {
  readonly delay: number;
  readonly gap: number;
}

/** From plain to see to the limit of the eye; common practice, no source. */
const LEVELS: readonly LadderLevel[] = [
  { delay: 1, gap: 0.5 },
  { delay: 0.75, gap: 0.35 },
  { delay: 0.6, gap: 0.25 },
  { delay: 0.5, gap: 0.15 },
  { delay: 0.4, gap: 0.12 },
  { delay: 0.3, gap: 0.1 },
  { delay: 0.22, gap: 0.08 },
  { delay: 0.15, gap: 0.06 },
];

/** Levels count from 1. */
export const levelOf = (level: number): LadderLevel => LEVELS[level - 1] ?? { delay: 0.5, gap: 0.15 };

export interface Ladder {
  readonly level: number;
  /** Right answers in a row on this level. */
  readonly inARow: number;
}

const IN_A_ROW = 2;

export function climb({ level, inARow }: Ladder, right: boolean): Ladder {
  if (!right) return { level: Math.max(1, level - 1), inARow: 0 };
  if (inARow + 1 < IN_A_ROW) return { level, inARow: inARow + 1 };
  return { level: Math.min(LAST_LEVEL, level + 1), inARow: 0 };
}

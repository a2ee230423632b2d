// Two states of one kit, as two windows may have made them at the same moment.
import type { Kit } from '../../kit/kit.ts';
import { canonical } from '../canonical.ts';
import { mergeKit } from './merge.ts';

/** What both make together, and whether the foreign one already holds all of it. */
export function joinKits(mine: Kit, foreign: Kit): { readonly kit: Kit; readonly known: boolean } {
  const joined = mergeKit(mine, foreign);
  if (holdsSame(joined, mine)) return { kit: mine, known: holdsSame(mine, foreign) };
  return holdsSame(joined, foreign) ? { kit: foreign, known: true } : { kit: joined, known: false };
}

/** Whatever the order. */
const holdsSame = (one: Kit, other: Kit): boolean => canonical(mergeKit(one, one)) === canonical(mergeKit(other, other));

// Which correction each picture of a bracket was taken at, or that it was focused in live view. The order that is said beforehand gives it; where
// the person says otherwise, the pictures after it go on from there.
import type { Steps } from '../../units.ts';

export type BracketPart = 'live view' | Steps | 'left out';

/**
 * `order`: ids as they were taken. `corrections`: in the order to shoot them, after the one in live view. As many pictures as corrections mean that
 * there was none in live view. One left out keeps its turn; one more at the same correction takes none.
 */
export function bracketParts(
  order: readonly string[],
  corrections: readonly Steps[],
  told: ReadonlyMap<string, BracketPart>,
): ReadonlyMap<string, BracketPart> {
  const turns: readonly BracketPart[] = ['live view', ...corrections];
  const parts = new Map<string, BracketPart>();
  let [at, before]: [number, BracketPart | null] = [order.length === corrections.length ? 1 : 0, null];
  for (const id of order) {
    const due = turns[at] ?? 'left out';
    const part = told.get(id) ?? due;
    parts.set(id, part);
    if (part === due || part === 'left out') at += 1;
    else if (part !== before) at = afterNext(turns, part, at);
    before = part;
  }
  return parts;
}

function afterNext(turns: readonly BracketPart[], part: BracketPart, from: number): number {
  const found = turns.indexOf(part, from);
  return found < 0 ? from : found + 1;
}

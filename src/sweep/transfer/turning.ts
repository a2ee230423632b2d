// The focus must be turned until the whole band lies inside the scale. Which way the ring has to go nobody knows, so it is
// tried: what the holds show says whether it was the right way and far enough.
import type { Readiness } from '../end/care.ts';
import type { Transfer } from '../widthTransfer.ts';

/** `first`: a little, either way. `further`: the same way. `other way`: past sharp. `back`: it was too much. */
export type TurnWay = 'first' | 'further' | 'other way' | 'back';

/** Which way to turn now; null where the holds can go on, or where turning does not help. */
export function wayToTurn({ side, visible }: Transfer, readiness: Readiness): TurnWay | null {
  if (!readiness.ready || readiness.as === 'band') return null;
  if (readiness.as === 'nothing held') return 'back';
  if (readiness.as === 'beyond the scale') return (readiness.side === 'above') === (side === 'high') ? 'other way' : 'back';
  const { low, high } = readiness.ends;
  if (low.known === 'past' && high.known === 'past') return null;
  if ((high.known === 'past') !== (side === 'high')) return 'back';
  const nearer = visible === null || (side === 'high' ? low.last <= visible : high.last >= visible);
  return nearer ? 'further' : 'other way';
}

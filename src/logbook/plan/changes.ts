// What it costs to go from one situation to the next. The tripod comes first: a move of it means squaring up anew, so no
// order with more moves is ever better. Among those with as few moves, the least seconds of swapping count.
// Seconds: from experience, no source.
import type { Situation } from '../../kit/kit.ts';
import { seconds, type Seconds } from '../../units.ts';

export type Stop = Pick<Situation, 'id' | 'body' | 'lens' | 'converter' | 'focalLength' | 'distance'>;

/** Seconds for each change; the tripod's includes squaring up to the target, all include focusing anew. */
export const CHANGE = { tripod: 300, body: 90, lens: 60, converter: 45, zoom: 20 } as const;

export interface Change {
  readonly tripod: boolean;
  readonly body: boolean;
  readonly lens: boolean;
  readonly converter: boolean;
  readonly zoom: boolean;
}

export const changeBetween = (from: Stop, to: Stop): Change => ({
  tripod: from.distance !== to.distance,
  body: from.body !== to.body,
  lens: from.lens !== to.lens,
  converter: from.converter !== to.converter,
  zoom: from.lens === to.lens && from.focalLength !== to.focalLength,
});

export const secondsFor = (change: Change): Seconds => seconds(PARTS.reduce((sum, part) => sum + (change[part] ? CHANGE[part] : 0), 0));

const PARTS = ['tripod', 'body', 'lens', 'converter', 'zoom'] as const;

/** More than all swaps of any plan together. */
const ONE_MOVE = 1_000_000;

/** The cost by which orders are compared. */
export function costBetween(from: Stop, to: Stop): number {
  const change = changeBetween(from, to);
  return (change.tripod ? ONE_MOVE : 0) + secondsFor(change);
}

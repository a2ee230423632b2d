// Further takes of a word out of the sweeps it was used in: a word that was taken is a take of it once what it told has
// stood the next hold, which a person does not begin and judge upon a verdict they want to take back. Undoing, or other
// arrows than those told, says that it was mistaken.
import type { SweepEvent } from '../../sweep/event.ts';
import type { WordHeard } from './ear.ts';
import { takeOf, type Take } from './take.ts';
import { takeFaultOf } from './takeQuality.ts';

/** What was said, and the event of the standing journal that it became. */
export interface Said {
  readonly event: SweepEvent;
  readonly takes: readonly Take[];
}

/** The word as a take, if it is as good as one that is taught; `peak`: the largest sample while it was said. */
export function takeFrom({ word, stretch, recognition }: WordHeard, peak: number): Take | null {
  return takeFaultOf(word, { stretch, peak, long: false }, recognition) === null ? takeOf(word, stretch) : null;
}

/** So many of a word, the newest, stand beside those that were taught. */
export const LEARNED_A_WORD = 2;

/** What the words told became; null when nothing, or when they took something back. */
export function became(before: readonly SweepEvent[], after: readonly SweepEvent[]): SweepEvent | null {
  const last = after.at(-1);
  return last === undefined || last === before.at(-1) || after.length < before.length ? null : last;
}

/** `stood`: takes now confirmed. `waiting`: what may still be taken back. The rest was, and is never learned. */
export function confirmed(said: readonly Said[], journal: readonly SweepEvent[]): { readonly stood: readonly Take[]; readonly waiting: readonly Said[] } {
  const standing = said.map((one) => ({ one, at: journal.findIndex((event) => isStill(one.event, event)) }));
  const hasStood = (at: number): boolean => {
    const later = journal.slice(at + 1);
    const next = later.findIndex(({ did }) => did === 'began');
    return later.some(({ did }, index) => did === 'finished' || (did === 'judged' && next >= 0 && index > next));
  };
  return {
    stood: standing.flatMap(({ one, at }) => (at >= 0 && hasStood(at) ? one.takes : [])),
    waiting: standing.flatMap(({ one, at }) => (at >= 0 && !hasStood(at) ? [one] : [])),
  };
}

/** The same event, also after the arrows of its verdict were told beside it. */
function isStill(told: SweepEvent, now: SweepEvent): boolean {
  if (told.did !== now.did || told.at !== now.at) return false;
  if (told.did !== 'judged' || now.did !== 'judged') return true;
  const { light, arrows } = told.verdict;
  return light === now.verdict.light && (arrows === 'none' || arrows === now.verdict.arrows);
}

/** The takes with these learned. A word that is not taught any more stays so. */
export function withLearned(takes: readonly Take[], stood: readonly Take[]): readonly Take[] {
  const taught = new Set(withoutLearned(takes).map(({ word }) => word));
  const added = stood.filter(({ word }) => taught.has(word)).map((take): Take => ({ ...take, learned: true }));
  const counts = new Map<string, number>();
  return [...takes, ...added]
    .toReversed()
    .filter(({ word, learned }) => {
      if (!learned) return true;
      counts.set(word, (counts.get(word) ?? 0) + 1);
      return (counts.get(word) ?? 0) <= LEARNED_A_WORD;
    })
    .toReversed();
}

export const withoutLearned = (takes: readonly Take[]): readonly Take[] => takes.filter(({ learned }) => !learned);

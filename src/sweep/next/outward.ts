// Step by step, for those who want to watch the light change: from the first value that held, one value at a time
// upwards until it fails, then downwards (common practice, no source). Before anything held it gives no opinion.
import type { Hold } from '../hold.ts';
import { neighbour, type Scale } from '../scale.ts';
import type { Steps } from '../../units.ts';

/** The next value of the walk, or null when it has not begun or has come to both ends. */
export function outwardFrom(scale: Scale, holds: readonly Hold[]): Steps | null {
  const first = holds.find(({ reading }) => reading.counts === 'in');
  if (!first) return null;
  return nextUnheld(1) ?? nextUnheld(-1);

  function nextUnheld(direction: 1 | -1): Steps | null {
    let at: Steps | null = first?.value ?? null;
    while (at !== null) {
      const held = holds.filter(({ value }) => value === at);
      if (held.length === 0) return at;
      if (held.at(-1)?.reading.counts === 'out') return null;
      at = neighbour(scale, at, direction);
    }
    return null;
  }
}

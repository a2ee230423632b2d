// Keeps further takes of own words, where the person switched that on: waits until what was told by a word has stood, then
// puts its sound beside those that were taught. The sweep under way is heard as it was; the next one with what was learned.
import { effect, type ReadonlySignal } from '@preact/signals';
import type { Settings } from '../../settings.ts';
import type { SweepEvent } from '../../sweep/event.ts';
import type { SweepState } from '../../sweep/state.ts';
import { became, confirmed, withLearned, type Said } from '../../voice/ownWords/learning.ts';
import type { Take } from '../../voice/ownWords/take.ts';
import { words } from '../../words/catalogue.ts';
import type { Ports } from './ports.ts';
import type { Mishaps } from './troubles.ts';

interface World {
  readonly takes: Ports['takes'];
  readonly sweep: ReadonlySignal<SweepState | null>;
  readonly settings: ReadonlySignal<Settings>;
  readonly troubles: Mishaps;
}

const TROUBLE = 'learning';

export interface Learning {
  /** Words have just been taken that sounded so; `before`: the standing journal until then. */
  taken(takes: readonly Take[], before: readonly SweepEvent[]): void;
}

export function createLearning({ takes: store, sweep, settings, troubles }: World): Learning {
  let waiting: readonly Said[] = [];

  const isOn = (): boolean => {
    const { listen, learn: wished } = settings.peek().voice;
    return wished && listen === 'own';
  };

  effect(() => {
    const journal = sweep.value?.journal ?? [];
    if (waiting.length === 0) return;
    const { stood, waiting: still } = confirmed(waiting, journal);
    waiting = still;
    if (stood.length > 0 && isOn()) void learn(stood);
  });

  async function learn(stood: readonly Take[]): Promise<void> {
    const kept = await (await store()).change((now) => now && withLearned(now, stood));
    if (kept.ok) troubles.clear(TROUBLE);
    else troubles.add(TROUBLE, words('store').taught[kept.fault]);
  }

  return {
    taken(takes, before) {
      const event = became(before, sweep.peek()?.journal ?? []);
      if (event && takes.length > 0 && isOn()) waiting = [...waiting, { event, takes }];
    },
  };
}

// The route of sound is kept awake while a sweep runs here and something may be sounded or said: not in a pause, nor when the
// sweep is over.
import { effect, type ReadonlySignal } from '@preact/signals';
import type { SoundRoute } from '../../platform/soundRoute.ts';
import type { Settings } from '../../settings.ts';
import type { SweepState } from '../../sweep/state.ts';
import type { Role } from './session.ts';

interface World {
  readonly sweep: ReadonlySignal<SweepState | null>;
  readonly role: ReadonlySignal<Role>;
  readonly settings: ReadonlySignal<Settings>;
}

const RESTING: ReadonlySet<string | undefined> = new Set([undefined, 'paused', 'finished']);

export function keepAwake(route: SoundRoute, { sweep, role, settings }: World): void {
  effect(() => {
    const { sound, voice } = settings.value;
    route.keep(role.value === 'owner' && !RESTING.has(sweep.value?.phase.name) && (sound || voice.speak));
  });
}

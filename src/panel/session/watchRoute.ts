// The route of sound is kept awake while a sweep runs here and something may be sounded or said: not in a pause, nor when the
// sweep is over. What keeps it is read with the first sweep.
import { computed, effect, type ReadonlySignal } from '@preact/signals';
import type { Settings } from '../../settings.ts';
import type { SweepState } from '../../sweep/state.ts';
import { firstWords } from '../../words/first.ts';
import type { Ports } from './ports.ts';
import type { Role } from './session.ts';
import type { Mishaps } from './troubles.ts';

interface World extends Pick<Ports, 'route'> {
  readonly sweep: ReadonlySignal<SweepState | null>;
  readonly role: ReadonlySignal<Role>;
  readonly settings: ReadonlySignal<Settings>;
  readonly troubles: Mishaps;
}

const RESTING: ReadonlySet<string | undefined> = new Set([undefined, 'paused', 'finished']);

export function watchRoute({ route: open, sweep, role, settings, troubles }: World): void {
  let route: ReturnType<typeof open> | null = null;
  const awake = computed(() => {
    const { sound, voice } = settings.value;
    return role.value === 'owner' && !RESTING.has(sweep.value?.phase.name) && (sound || voice.speak);
  });
  effect(() => {
    const wanted = awake.value;
    if (!wanted && route === null) return;
    route ??= open();
    route.then((one) => one.keep(wanted)).catch(() => troubles.add('route', firstWords().unread));
  });
}

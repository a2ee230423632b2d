// A session out of its parts: what is stored, the sweep under way, and the ways a person reaches it.
import { computed, effect, signal } from '@preact/signals';
import { contentsOf, KEY } from '../../logbook/stored.ts';
import { understood } from '../../sweep/understood.ts';
import type { Moment } from '../../units.ts';
import { createGestures } from './gestures.ts';
import { createHearing } from './hearing.ts';
import { createKeeper } from './keeper.ts';
import { createLibrary } from './library.ts';
import { createLive } from './live.ts';
import { load } from './load.ts';
import { planFor } from './plan.ts';
import type { Ports } from './ports.ts';
import type { Listener, Session } from './session.ts';
import { failed } from '../../result.ts';
import { createTold } from './told.ts';
import { createTroubles } from './troubles.ts';

const TICK = 100;

export function createSession(ports: Ports): Session {
  const { store, now } = ports;
  const troubles = createTroubles();
  const keeper = createKeeper(store, troubles);
  const library = createLibrary(keeper, ports.newId);
  const hearing = createHearing(ports, troubles);
  const live = createLive(
    { ...ports, keeper, troubles, settings: library.settings, deafen: () => hearing.ear.deafen() },
    {
      async journal() {
        const read = await store.read();
        return read.ok ? contentsOf(read.value).contents.live : null;
      },
      record: (record) => library.record(record),
      withdraw: (id) => library.withdraw(id),
    },
  );
  const told = createTold(live, now);
  const attending = signal<Listener | null>(null);
  // Beside a sweep a press waits for a possible second one, as it does during a hold.
  const gestures = createGestures(
    now,
    () => (attending.peek() ? 'holding' : (live.sweep.peek()?.phase.name ?? null)),
    (press) => (attending.peek() ?? told).take(press),
  );
  hearing.start(live, library, told, attending);

  store.onChange((changes) => {
    if (!library.isFilled()) return;
    library.changed(changes);
    if (KEY.live in changes) live.follow(contentsOf({ [KEY.live]: changes[KEY.live] }).contents.live);
  });

  async function read(): Promise<void> {
    const contents = await load({ ...ports, keeper, troubles }, () => void read());
    if (contents === null) return;
    library.fill(contents);
    await live.adopt(contents.live);
  }

  /** At a gesture: sound may be held back and the screen may go dark until there is one. */
  function touched(): void {
    if (library.settings.peek().sound) ports.tones.wake();
    if (live.role.peek() === 'owner' && live.sweep.peek()) ports.wakeLock.keepAwake();
  }

  return {
    ready: read(),
    sweep: live.sweep,
    role: live.role,
    kit: library.kit,
    records: library.records,
    settings: library.settings,
    troubles: troubles.list,
    announcement: live.carrier.announcement,
    heard: told.heard,
    ear: hearing.state,
    understood: computed(() => (live.sweep.value ? understood(live.sweep.value) : null)),
    pressed: gestures.pressed,
    now: ticking(() => live.sweep.value?.phase.name === 'holding', now),
    input(input) {
      touched();
      told.take(input);
    },
    contact(move) {
      touched();
      gestures.contact(move);
    },
    async begin(beginning) {
      if (!library.isFilled()) return failed('What is stored has not been read yet. Wait a moment, or close this panel and open it again.');
      const plan = planFor(beginning, library.kit.peek(), library.settings.peek(), ports.newSeed);
      if (!plan.ok) return plan;
      touched();
      const begun = await live.begin(plan.value);
      if (begun.ok) ports.wakeLock.keepAwake();
      return begun;
    },
    leave: live.leave,
    saveBody: library.saveBody,
    saveLens: library.saveLens,
    saveSituation: library.saveSituation,
    changeSettings: library.changeSettings,
    takeOver: live.takeOver,
    openMicrophonePage: ports.openMicrophonePage,
    openTargetPage: ports.openTargetPage,
    attend(listener) {
      touched();
      attending.value = listener;
      return () => {
        if (attending.peek() === listener) attending.value = null;
      };
    },
    sayAtOnce(words) {
      live.carrier.silence();
      live.carrier.tell(words);
    },
    noteBench: live.noteBench,
    dismiss: troubles.dismiss,
  };
}

/** The time, moving only while it is looked at. */
function ticking(wanted: () => boolean, now: () => Moment) {
  const time = signal(now());
  const on = computed(wanted);
  effect(() => {
    if (!on.value) return;
    time.value = now();
    const timer = setInterval(() => {
      time.value = now();
    }, TICK);
    return () => clearInterval(timer);
  });
  return time;
}

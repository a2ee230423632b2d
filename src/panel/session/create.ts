// A session out of its parts: what is stored, the sweep under way, and the ways a person reaches it.
import { computed, effect, signal } from '@preact/signals';
import { KEY } from '../../logbook/keys.ts';
import { understood } from '../../sweep/understood.ts';
import type { Moment } from '../../units.ts';
import { watchChanges } from './changes.ts';
import { createGestures } from './gestures.ts';
import { createHearing } from './hearing.ts';
import { createStages } from './howFar.ts';
import { createKeeper } from './keeper.ts';
import type * as DeskPart from './desk.ts';
import type { Desk } from './desk.ts';
import { createLibrary } from './library.ts';
import { createLive } from './live.ts';
import { openStored } from './opening.ts';
import type { Ports } from './ports.ts';
import type { Attendant, Described, LeftFor, Session } from './session.ts';
import { DONE, failed, got } from '../../result.ts';
import { createTold } from './told.ts';
import { firstWords } from '../../words/first.ts';
import { words } from '../../words/catalogue.ts';
import { createTroubles } from './troubles.ts';

const TICK = 100;
const untold = (sentence = firstWords().notRead) => failed({ of: null, sentence });
const unsaved = () => failed([{ field: null, sentence: firstWords().notRead }]);

export function createSession(ports: Ports): Session {
  const { store, now } = ports;
  const troubles = createTroubles();
  const reading = createStages();
  const bringing = createStages();
  let desk: Desk | null = null;
  let part: typeof DeskPart | null = null;
  const keeper = createKeeper(store, troubles);
  const library = createLibrary(keeper, (wanted) => part?.settled(wanted) ?? null);
  const proofWorld = { ...ports, keeper, library, troubles };
  const hearing = createHearing(ports, troubles);
  const live = createLive(
    { ...ports, keeper, troubles, settings: library.settings, deafen: () => hearing.deafen(), engine: () => part?.engine ?? notYet() },
    {
      async journal() {
        const read = await store.readSome([KEY.live]);
        return read.ok && part ? part.contentsOf(read.value).contents.live : null;
      },
      record: (record) => library.record(record),
      withdraw: (id) => library.withdraw(id),
    },
  );
  const told = createTold(live, now, {
    ending: () => desk,
    nextLens: () => nextLens(),
    switchFarView() {
      const far = !library.settings.peek().look.far;
      library.changeSettings({ look: { far } });
      return far;
    },
  });
  effect(() => ports.keepSteady(isTimed(live.sweep.value?.phase.name)));
  const attending = signal<Attendant | null>(null);
  const leftFor = signal<LeftFor | null>(null);
  // Beside a sweep a press waits for a possible second one, as it does during a hold.
  const gestures = createGestures(
    now,
    () => (attending.peek() ? 'holding' : (live.sweep.peek()?.phase.name ?? null)),
    (press) => (attending.peek() ?? told).take(press),
  );
  hearing.start(live, library, told, attending, nextLens);

  const changes = watchChanges(store, (changed) => {
    if (!part || !library.isFilled()) return;
    const read = part.contentsOf(changed);
    library.changed(changed, read);
    if (KEY.live in changed) live.follow(read.contents.live);
  });

  const { whole, ready } = openStored({
    ...ports,
    keeper,
    library,
    live,
    troubles,
    reading,
    changes,
    has(read) {
      part = read;
      desk ??= read.createDesk({ library, live, newId: ports.newId, now });
    },
  });

  /** What earlier sweeps have a say in waits until all of them have been read. */
  function toWhole(tell: () => Described | undefined): Described {
    const share = reading.share.peek();
    return share === null ? (tell() ?? untold()) : untold(words('session').stored.reading(share));
  }

  /** At a gesture: sound may be held back and the screen may go dark until there is one. */
  function touched(): void {
    if (library.settings.peek().sound) ports.tones.wake();
    if (live.role.peek() === 'owner' && live.sweep.peek()) ports.wakeLock.keepAwake();
  }

  /** The sweep on the screen is this one, and finished. */
  const isOver = (record: string): boolean => {
    const state = live.sweep.peek();
    return state?.id === record && state.phase.name === 'finished';
  };

  /** What was held goes into the logbook, under a stand-in where nobody has named it. */
  function keepUnderSomeName(): void {
    const state = live.sweep.peek();
    if (live.role.peek() === 'owner' && state && state.holds.length + state.spent.length > 0) desk?.named();
  }

  async function leave(wanted: LeftFor | null): Promise<void> {
    await whole;
    keepUnderSomeName();
    leftFor.value = wanted;
    await live.leave();
  }

  /** On from a result; the practice camera has no next lens. */
  function nextLens(name: string | null = null): void {
    void leave(live.sweep.peek()?.plan.practice ? null : { name });
  }

  return {
    ready,
    reading: reading.share,
    bringing: bringing.share,
    sweep: live.sweep,
    role: live.role,
    kit: library.kit,
    records: library.records,
    byHand: library.byHand,
    entries: library.entries,
    notes: library.notes,
    proofs: library.proofs,
    plan: library.plan,
    backedUp: library.backedUp,
    unwritten: keeper.unwritten,
    onDisk: keeper.written,
    settings: library.settings,
    troubles: troubles.list,
    announcement: live.carrier.announcement,
    heard: told.latest,
    ear: hearing.state,
    deaf: hearing.deaf,
    mute: live.carrier.mute,
    microphone: ports.microphone,
    listenAgain: hearing.again,
    trySound: async () => (await import('./tryingSound.ts')).trySound(ports, library.settings.peek(), hearing.deafen),
    understood: computed(() => (live.sweep.value ? understood(live.sweep.value, told.asked.value) : null)),
    pressAsked: told.asked,
    pressed: gestures.pressed,
    now: ticking(() => live.sweep.value?.phase.name === 'holding', now),
    input(input) {
      touched();
      told.take(input);
    },
    contact(move, waited) {
      touched();
      // With the press, whoever has understood already cuts the prompt short.
      if (move === 'down' && live.role.peek() === 'owner') live.carrier.hush();
      if (!hearing.contact(move)) gestures.contact(move, waited);
    },
    async begin(beginning) {
      // Who presses while the panel is still reading waits that moment.
      await ready;
      if (!library.isFilled()) return failed(firstWords().notRead);
      const part = await import('./plan.ts').catch(() => null);
      if (!part) return failed(firstWords().unread);
      if (beginning.with === 'transfer' && isOver(beginning.record)) {
        keepUnderSomeName();
        await new Promise<void>((done) => live.carrier.inTurn(done));
      }
      const plan = part.planFor(beginning, library, ports.newSeed, desk);
      if (!plan.ok) return plan;
      touched();
      if (beginning.with === 'transfer' && isOver(beginning.record)) await live.leave();
      const begun = await live.begin(plan.value);
      if (!begun.ok) return failed(words('session').unbegun[begun.fault]);
      leftFor.value = null;
      ports.wakeLock.keepAwake();
      return DONE;
    },
    leave: () => void leave(null),
    nextLens,
    leftFor,
    describe: (told) => toWhole(() => desk?.describe(told)),
    named: () => desk?.named() ?? null,
    nameKept: (situation, told) => toWhole(() => desk?.nameKept(situation, told)),
    situationFor: (about) => desk?.situationFor(about) ?? unsaved(),
    propose: (value) => desk?.propose(value),
    saveBody: (draft) => desk?.saveBody(draft) ?? unsaved(),
    saveLens: (draft) => desk?.saveLens(draft) ?? unsaved(),
    saveSituation: (draft) => desk?.saveSituation(draft) ?? unsaved(),
    putKit: (list, item, seen) => desk?.putKit(list, item, seen) ?? unsaved(),
    retireKit: (list, id, away) => desk?.retireKit(list, id, away) ?? unsaved(),
    planJob: (situations) => desk?.planJob(situations),
    enter: (entry) => desk?.enter(entry) ?? failed(firstWords().notRead),
    writeByHand: (draft) => desk?.writeByHand(draft) ?? failed(firstWords().notRead),
    tellConditions: (record, conditions) => desk?.tellConditions(record, conditions) ?? failed(firstWords().notRead),
    noteOn: (note) => desk?.noteOn(note) ?? failed(firstWords().notRead),
    keepProof: async (situation, proof, crops) => (await import('./proofs.ts')).keepProof(proofWorld, situation, proof, crops),
    eraseProof: async (id) => (await import('./proofs.ts')).eraseProof(proofWorld, id),
    eraseCrops: async (id) => (await import('./proofs.ts')).eraseCrops(proofWorld, id),
    cropsOf: async ({ crops }) => (crops === null ? got(null) : (await ports.crops()).read(crops)),
    async bring(other, how) {
      const { bring } = await import('./bringing.ts');
      return bring({ ...ports, keeper, library, changes, bringing }, other, how);
    },
    async copies() {
      return (await ports.snapshots()).times();
    },
    async bringBack(at) {
      const { bringBack } = await import('./bringing.ts');
      return bringBack({ ...ports, keeper, library, changes, bringing }, at);
    },
    taught: async () => (await ports.takes()).read(),
    taughtInAll: async () => (await ports.takes()).all(),
    bringTaught: async (brought, how) => (await import('./bringing.ts')).bringTaught(await ports.takes(), brought, how),
    eraseHeard: async () => (await import('./erasing.ts')).eraseHeard({ ...ports, keeper, library, live }),
    backUp: library.backUp,
    say: live.carrier.tell,
    sayNext: live.carrier.tellNext,
    sayShown: (sentence, when) => live.carrier[when === 'now' ? 'tell' : 'tellNext']({ spoken: sentence }),
    clock: now,
    changeSettings: library.changeSettings,
    syncValues: (on) => library.changeSettings({ logbook: { sync: on ? ports.newId() : null } }),
    takeOver: live.takeOver,
    openPage: ports.openPage,
    voices: ports.speech.voices,
    browserRecognises: ports.browserRecognises,
    installed: ports.installed,
    attend(attendant) {
      touched();
      attending.value = attendant;
      return () => {
        if (attending.peek() === attendant) attending.value = null;
      };
    },
    noteBench: (bench) => desk?.noteBench(bench) ?? false,
    dismiss: troubles.dismiss,
  };
}

/** The time of a hold is being taken. */
const isTimed = (phase: string | undefined): boolean => phase === 'holding' || phase === 'judging';

/** A sweep begins, is shown and moves only when what is stored has been read. */
function notYet(): never {
  throw new Error('A sweep moved before its engine was read.');
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

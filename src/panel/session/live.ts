// The sweep under way: its state, its journal on disk, and which panel runs it. This panel either runs the sweep, or
// follows the journal that another one writes; the role changes when that panel closes or this one takes over.
import { signal, type ReadonlySignal } from '@preact/signals';
import { KEY } from '../../logbook/stored.ts';
import type { LogRecord } from '../../logbook/record.ts';
import { failed, DONE, type Result } from '../../result.ts';
import type { Journal, Opened, SweepEvent } from '../../sweep/event.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import { currentPrompt } from '../../sweep/currentPrompt.ts';
import { open } from '../../sweep/opening.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { SweepState } from '../../sweep/state.ts';
import type { Step } from '../../sweep/step.ts';
import { replay, transition } from '../../sweep/transition.ts';
import { promptInWords } from '../../voice/prompts.ts';
import { createCarrier, type Carrier, type CarrierWorld } from './carrier.ts';
import { followed } from './follow.ts';
import type { Keeper } from './keeper.ts';
import type { Ports } from './ports.ts';
import { rung } from './rung.ts';
import type { Role } from './session.ts';

export interface Live {
  readonly sweep: ReadonlySignal<SweepState | null>;
  readonly role: ReadonlySignal<Role>;
  readonly carrier: Carrier;
  /** Moves the sweep, if this panel runs it; null when there is nothing to move. */
  dispatch(event: SweepEvent): Step | null;
  begin(plan: Plan): Promise<Result>;
  leave(): void;
  takeOver(): void;
  /** The journal found at the start, or none. */
  adopt(journal: Journal | null): Promise<void>;
  /** The journal as another panel has written it; null when it left its sweep. */
  follow(journal: Journal | null): void;
}

export interface LiveOwner {
  /** The journal on disk right now. */
  read(): Promise<Journal | null>;
  record(record: LogRecord): Promise<void>;
  withdraw(id: string): Promise<void>;
}

/** After taking over, the writes that the other panel had on their way have arrived. */
const SETTLED = 300;

export function createLive(world: CarrierWorld & Pick<Ports, 'ownership' | 'wakeLock' | 'newId'> & { keeper: Keeper }, owner: LiveOwner): Live {
  const { keeper, ownership, now } = world;
  const sweep = signal<SweepState | null>(null);
  const role = signal<Role>('asking');
  /** Everything as it happened, with what was taken back since. */
  let journal: readonly SweepEvent[] = [];
  let running = false;

  const carrier = createCarrier(world, {
    async keep(event) {
      if (!running) return;
      journal = [...journal, event];
      await keeper.keep({ [KEY.live]: journal });
    },
    record: (outcome) => record(outcome),
    ring(alarm, due, late) {
      const state = sweep.peek();
      const event = state && rung(alarm, state, due, now(), late);
      if (event) dispatch(event);
    },
  });

  function dispatch(event: SweepEvent): Step | null {
    const before = sweep.peek();
    if (!before || !running) return null;
    const step = transition(before, event);
    sweep.value = step.state;
    carrier.carry(step.effects, event.at);
    if (before.phase.name === 'finished' && step.state.phase.name !== 'finished') carrier.inTurn(() => owner.withdraw(before.id));
    if (step.state.phase.name === 'finished') world.wakeLock.release();
    return step;
  }

  /** A sweep in which nothing was held leaves no record. */
  async function record(outcome: Outcome): Promise<void> {
    const state = sweep.peek();
    const whole = journal;
    if (state?.phase.name !== 'finished' || outcome.tally.holds === 0) return;
    const { id, plan, phase } = state;
    await owner.record({ id, finished: phase.at, practice: plan.practice !== null, subject: plan.subject, outcome, journal: [...whole] });
  }

  function show(events: readonly SweepEvent[], state: SweepState | null): void {
    journal = events;
    sweep.value = state;
  }

  /** Takes up a sweep that another panel, or this one before a crash, has left. */
  function run(): void {
    const state = sweep.peek();
    running = true;
    role.value = 'owner';
    if (!state) return;
    const { phase, plan } = state;
    if (phase.name === 'finished') {
      carrier.inTurn(() => record(phase.outcome));
    } else {
      dispatch({ did: 'cut off', at: now() });
      // Nobody is counted in who has not said that they are there.
      if (plan.manner.pace.set === 'counted') dispatch({ did: 'paused', at: now(), by: 'count' });
    }
    if (sweep.peek() === state) carrier.tell(promptInWords(currentPrompt(state, now())));
  }

  function stopRunning(): void {
    running = false;
    carrier.silence();
    world.wakeLock.release();
  }

  function follow(found: Journal | null): void {
    if (running) return;
    if (found === null) {
      show([], null);
      role.value = 'owner';
      ownership.release();
      return;
    }
    show(found, followed(journal, sweep.peek(), found));
    role.value = 'follower';
    ownership.queue();
  }

  ownership.onGot(async () => {
    role.value = 'asking';
    await new Promise((settled) => setTimeout(settled, SETTLED));
    const found = await owner.read();
    if (found === null) return follow(null);
    show(found, followed(journal, sweep.peek(), found));
    run();
  });

  ownership.onLost(() => {
    stopRunning();
    keeper.forget(KEY.live);
    role.value = 'follower';
    ownership.queue();
  });

  return {
    sweep,
    role,
    carrier,
    dispatch,
    follow,
    async adopt(found) {
      if (found === null) return follow(null);
      show(found, replay(found));
      if (await ownership.claim()) run();
      else follow(found);
    },
    async begin(plan) {
      if (sweep.peek()) return failed('A sweep is under way. Finish it or leave it first.');
      if (!(await ownership.claim())) return failed('Another window has just begun a sweep. Finish that one first.');
      const opened: Opened = { did: 'opened', at: now(), id: world.newId(), plan };
      const step = open(opened);
      running = true;
      role.value = 'owner';
      show([], step.state);
      carrier.carry(step.effects, opened.at);
      return DONE;
    },
    leave() {
      const state = sweep.peek();
      if (!state || !running) return;
      if (state.phase.name !== 'finished') dispatch({ did: 'finished', at: now(), by: 'pointer' });
      carrier.silence();
      carrier.inTurn(async () => {
        show([], null);
        stopRunning();
        await keeper.keep({ [KEY.live]: undefined });
        ownership.release();
      });
    },
    takeOver() {
      if (sweep.peek() && !running) ownership.take();
    },
  };
}

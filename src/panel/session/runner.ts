// Runs one sweep in this panel: moves it, keeps its journal on disk, takes it up again after a crash, and puts it into the
// logbook. While it does not run it only shows the journal that another panel writes.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { LogRecord } from '../../logbook/record.ts';
import { KEY } from '../../logbook/keys.ts';
import type { Effect } from '../../sweep/effect.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Journal, Opened, SweepEvent } from '../../sweep/event.ts';
import { isNamed } from '../../sweep/named.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { Replanned } from '../../sweep/replanned.ts';
import type { Phase, SweepState } from '../../sweep/state.ts';
import type { Move } from '../../sweep/step.ts';
import type { Moment, Steps } from '../../units.ts';
import { saidAndShown } from '../../words/catalogue.ts';
import { createCarrier, type Carrier, type CarrierWorld } from './carrier.ts';
import type { Engine } from './engine.ts';
import type { Keeper } from './keeper.ts';
import type { Ports } from './ports.ts';
import { rung } from './rung.ts';

/** Another journal, and the state it adds up to; null where it cannot be. */
type Rework = (journal: readonly SweepEvent[], state: SweepState) => Replanned | null;

export interface Runner {
  readonly sweep: ReadonlySignal<SweepState | null>;
  readonly carrier: Carrier;
  isRunning(): boolean;
  /** Moves the sweep if it runs here; null when there is nothing to move. */
  dispatch(event: SweepEvent): Move | null;
  /** Says where this sweep stands and what it asks for. */
  tellWhere(state: SweepState): void;
  /** Keeps an event that moves nothing. */
  note(event: SweepEvent): void;
  /** Changes what the sweep remembers, in hand and on disk, where nothing of it counts for the search. */
  rewrite(change: <Part>(part: Part) => Part): Promise<void>;
  begin(plan: Plan): void;
  /** Changes what the journal opened with; false where the sweep does not run here, or where `change` says that it does not fit. */
  rework(change: Rework): boolean;
  /** Shows this journal, or none. */
  show(journal: Journal | null): void;
  /** Runs from now on what is shown, as it was left by another panel or by this one before a crash. */
  takeUp(): void;
  /** Another panel runs it now: nothing more is said or written here. */
  stop(): void;
  /** Ends the sweep and puts it away; `done` when nothing of it is left on disk but its record. */
  putAway(done: () => void): void;
}

export interface Logbook {
  record(record: LogRecord): Promise<void>;
  withdraw(id: string): Promise<void>;
}

export type RunnerWorld = CarrierWorld &
  Pick<Ports, 'wakeLock' | 'newId'> & {
    readonly keeper: Keeper;
    /** Comes with what is stored: asked for only where a sweep begins, is shown or moves. */
    readonly engine: () => Engine;
  };

export function createRunner(world: RunnerWorld, logbook: Logbook): Runner {
  const { keeper, now, engine } = world;
  const sweep = signal<SweepState | null>(null);
  /** Everything as it happened, with what was taken back since. */
  let journal: readonly SweepEvent[] = [];
  let running = false;

  /** Everything up to this event is on disk when it ends. */
  async function write(): Promise<void> {
    if (running) await keeper.keep({ [KEY.live]: journal });
  }

  const carrier = createCarrier(world, {
    keep: write,
    record,
    ring(alarm, due, late) {
      const state = sweep.peek();
      const event = state && rung(alarm, state, due, now(), late);
      if (event) dispatch(event);
    },
  });

  function carry(effects: readonly Effect[], at: Moment): void {
    journal = [...journal, ...effects.flatMap((effect) => (effect.do === 'keep' ? [effect.event] : []))];
    carrier.carry(effects, at);
  }

  function dispatch(event: SweepEvent): Move | null {
    const before = sweep.peek();
    if (!before || !running) return null;
    const step = engine().transition(before, event);
    const isFinished = step.state.phase.name === 'finished';
    sweep.value = step.state;
    carry(step.effects, event.at);
    if (before.phase.name === 'finished' && !isFinished) carrier.inTurn(() => logbook.withdraw(before.id));
    if (isFinished) world.wakeLock.release();
    return step;
  }

  /** A sweep in which nothing was held leaves no record, and one that nobody has named yet waits for its name. */
  async function record(outcome: Outcome): Promise<void> {
    const state = sweep.peek();
    if (state?.phase.name !== 'finished' || outcome.tally.holds === 0) return;
    const { id, plan, phase } = state;
    const { subject } = plan;
    if (!isNamed(subject)) return;
    const practice = plan.practice !== null;
    await logbook.record({ id, finished: phase.at, practice, subject, outcome, journal: [...journal] });
  }

  function rework(change: Rework): boolean {
    const before = sweep.peek();
    const again = before && running ? change(journal, before) : null;
    if (!before || !again) return false;
    ({ journal } = again);
    sweep.value = again.state;
    carrier.inTurn(write);
    const { phase } = again.state;
    if (phase.name === 'finished') carrier.inTurn(() => record(phase.outcome));
    else if (valueIn(phase) !== valueIn(before.phase)) tellWhere(again.state);
    return true;
  }

  const tellWhere = (state: SweepState): void => carrier.tell(saidAndShown('spoken', (say) => say.prompt(engine().currentPrompt(state, now()))));

  function stop(): void {
    running = false;
    carrier.silence();
    world.wakeLock.release();
    keeper.forget(KEY.live);
  }

  return {
    sweep,
    carrier,
    dispatch,
    tellWhere,
    stop,
    note(event) {
      if (!running) return;
      journal = [...journal, event];
      carrier.inTurn(write);
    },
    isRunning: () => running,
    rewrite(change) {
      const state = sweep.peek();
      if (!state || !running) return Promise.resolve();
      sweep.value = { ...state, holds: change(state.holds), spent: change(state.spent), journal: change(state.journal) };
      journal = change(journal);
      return new Promise((done) => {
        carrier.inTurn(async () => {
          await write();
          done();
        });
      });
    },
    begin(plan) {
      const opened: Opened = { did: 'opened', at: now(), id: world.newId(), plan };
      const step = engine().openSweep(opened);
      running = true;
      journal = [];
      sweep.value = step.state;
      carry(step.effects, opened.at);
    },
    rework,
    show(found) {
      sweep.value = found && engine().followed(journal, sweep.peek(), found);
      journal = found ?? [];
    },
    takeUp() {
      const state = sweep.peek();
      if (!state) return;
      running = true;
      const { phase, plan } = state;
      if (phase.name === 'finished') {
        carrier.inTurn(() => record(phase.outcome));
      } else {
        dispatch({ did: 'cut off', at: now() });
        // Nobody is counted in who has not said that they are there.
        if (plan.manner.pace.set === 'counted') dispatch({ did: 'paused', at: now(), by: 'count' });
      }
      if (sweep.peek() === state) tellWhere(state);
    },
    putAway(done) {
      if (sweep.peek()?.phase.name !== 'finished') dispatch({ did: 'finished', at: now(), by: 'pointer' });
      carrier.silence();
      carrier.inTurn(async () => {
        sweep.value = null;
        stop();
        await keeper.keep({ [KEY.live]: undefined });
        done();
      });
    },
  };
}

const valueIn = (phase: Phase): Steps | null => ('next' in phase ? phase.next.value : null);

// Runs one sweep in this panel: moves it, keeps its journal on disk, takes it up again after a crash, and puts it into the
// logbook. While it does not run it only shows the journal that another panel writes.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { LogRecord } from '../../logbook/record.ts';
import { KEY } from '../../logbook/keys.ts';
import type { StoredBench } from '../../sweep/storedBench.ts';
import { currentPrompt } from '../../sweep/currentPrompt.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Journal, Opened, SweepEvent } from '../../sweep/event.ts';
import { open } from '../../sweep/opening.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { SweepState } from '../../sweep/state.ts';
import type { Move } from '../../sweep/step.ts';
import { replay, transition } from '../../sweep/transition.ts';
import { promptInWords } from '../../voice/prompts.ts';
import { createCarrier, type Carrier, type CarrierWorld } from './carrier.ts';
import { followed } from './follow.ts';
import type { Keeper } from './keeper.ts';
import type { Ports } from './ports.ts';
import { rung } from './rung.ts';

export interface Runner {
  readonly sweep: ReadonlySignal<SweepState | null>;
  readonly carrier: Carrier;
  isRunning(): boolean;
  /** Moves the sweep if it runs here; null when there is nothing to move. */
  dispatch(event: SweepEvent): Move | null;
  /** Keeps an event that moves nothing. */
  note(event: SweepEvent): void;
  /** Changes what the sweep remembers, in hand and on disk, where nothing of it counts for the search. */
  rewrite(change: <Part>(part: Part) => Part): Promise<void>;
  begin(plan: Plan): void;
  /** The plan is settled by the first hold; until then it may be told how the rig was set up. */
  noteBench(bench: StoredBench): boolean;
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

export type RunnerWorld = CarrierWorld & Pick<Ports, 'wakeLock' | 'newId'> & { readonly keeper: Keeper };

export function createRunner(world: RunnerWorld, logbook: Logbook): Runner {
  const { keeper, now } = world;
  const sweep = signal<SweepState | null>(null);
  /** Everything as it happened, with what was taken back since. */
  let journal: readonly SweepEvent[] = [];
  let running = false;

  async function keep(event: SweepEvent): Promise<void> {
    if (!running) return;
    journal = [...journal, event];
    await keeper.keep({ [KEY.live]: journal });
  }

  const carrier = createCarrier(world, {
    keep,
    record,
    ring(alarm, due, late) {
      const state = sweep.peek();
      const event = state && rung(alarm, state, due, now(), late);
      if (event) dispatch(event);
    },
  });

  function dispatch(event: SweepEvent): Move | null {
    const before = sweep.peek();
    if (!before || !running) return null;
    const step = transition(before, event);
    const isFinished = step.state.phase.name === 'finished';
    sweep.value = step.state;
    carrier.carry(step.effects, event.at);
    if (before.phase.name === 'finished' && !isFinished) carrier.inTurn(() => logbook.withdraw(before.id));
    if (isFinished) world.wakeLock.release();
    return step;
  }

  /** A sweep in which nothing was held leaves no record. */
  async function record(outcome: Outcome): Promise<void> {
    const state = sweep.peek();
    if (state?.phase.name !== 'finished' || outcome.tally.holds === 0) return;
    const { id, plan, phase } = state;
    const practice = plan.practice !== null;
    await logbook.record({ id, finished: phase.at, practice, subject: plan.subject, outcome, journal: [...journal] });
  }

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
    stop,
    note: (event) => carrier.inTurn(() => keep(event)),
    isRunning: () => running,
    rewrite(change) {
      const state = sweep.peek();
      if (!state || !running) return Promise.resolve();
      sweep.value = { ...state, holds: change(state.holds), spent: change(state.spent), journal: change(state.journal) };
      return new Promise((done) => {
        carrier.inTurn(async () => {
          journal = change(journal);
          await keeper.keep({ [KEY.live]: journal });
          done();
        });
      });
    },
    begin(plan) {
      const opened: Opened = { did: 'opened', at: now(), id: world.newId(), plan };
      const step = open(opened);
      running = true;
      journal = [];
      sweep.value = step.state;
      carrier.carry(step.effects, opened.at);
    },
    noteBench(bench) {
      const [opened, ...rest] = journal;
      if (!running || opened?.did !== 'opened' || rest.some(({ did }) => did === 'began')) return false;
      const noted: Journal = [{ ...opened, plan: { ...opened.plan, bench } }, ...rest];
      journal = noted;
      sweep.value = replay(noted);
      carrier.inTurn(() => keeper.keep({ [KEY.live]: journal }));
      return true;
    },
    show(found) {
      sweep.value = found && followed(journal, sweep.peek(), found);
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
      if (sweep.peek() === state) carrier.tell(promptInWords(currentPrompt(state, now())));
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

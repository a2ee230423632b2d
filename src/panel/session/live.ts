// The sweep under way, and which panel runs it: this one, or another one whose journal is followed here. The role changes
// when that panel leaves its sweep or closes, or when this one takes over.
import { signal, type ReadonlySignal } from '@preact/signals';
import { failed, got, type Result } from '../../result.ts';
import type { Journal } from '../../sweep/event.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { Ports } from './ports.ts';
import { createRunner, type Logbook, type Runner, type RunnerWorld } from './runner.ts';
import type { Role } from './session.ts';

/** Why no sweep begins here. */
type BeginFault = 'under way' | 'begun elsewhere';

export interface Live extends Pick<Runner, 'sweep' | 'carrier' | 'dispatch' | 'tellWhere' | 'note' | 'rewrite' | 'rework'> {
  readonly role: ReadonlySignal<Role>;
  begin(plan: Plan): Promise<Result<undefined, BeginFault>>;
  /** Resolves when the sweep is put away. */
  leave(): Promise<void>;
  takeOver(): void;
  /** The journal found at the start, or none. */
  adopt(journal: Journal | null): Promise<void>;
  /** The journal as it lies on disk now, whoever has written it; null when there is none any more. */
  follow(journal: Journal | null): void;
}

/** After taking over, the writes that the other panel had on their way have arrived. */
const SETTLED = 300;

export function createLive(world: RunnerWorld & Pick<Ports, 'ownership'>, logbook: Logbook & { journal(): Promise<Journal | null> }): Live {
  const { ownership } = world;
  const role = signal<Role>('asking');
  const runner = createRunner(world, logbook);

  function run(): void {
    role.value = 'owner';
    runner.takeUp();
  }

  function follow(journal: Journal | null): void {
    if (runner.isRunning()) return;
    runner.show(journal);
    role.value = journal ? 'follower' : 'owner';
    if (journal) ownership.queue();
    else ownership.release();
  }

  ownership.onGot(async () => {
    role.value = 'asking';
    await new Promise((settled) => setTimeout(settled, SETTLED));
    const journal = await logbook.journal();
    if (journal === null) return follow(null);
    runner.show(journal);
    run();
  });

  ownership.onLost(() => {
    runner.stop();
    role.value = 'follower';
    ownership.queue();
  });

  return {
    sweep: runner.sweep,
    carrier: runner.carrier,
    dispatch: runner.dispatch,
    tellWhere: runner.tellWhere,
    note: runner.note,
    rewrite: runner.rewrite,
    rework: runner.rework,
    role,
    follow,
    async adopt(journal) {
      if (runner.isRunning()) return;
      if (journal === null || !(await ownership.claim())) return follow(journal);
      runner.show(journal);
      run();
    },
    async begin(plan) {
      if (runner.sweep.peek()) return failed('under way');
      if (!(await ownership.claim())) return failed('begun elsewhere');
      role.value = 'owner';
      runner.begin(plan);
      return got(undefined);
    },
    async leave() {
      if (!runner.isRunning()) return;
      await new Promise<void>((done) => runner.putAway(done));
      ownership.release();
    },
    takeOver() {
      if (runner.sweep.peek() && !runner.isRunning()) ownership.take();
    },
  };
}

// The end-to-end tests in turn: what is spoken takes its real time and little of the computer, so other work and then the tours are taken
// beside it, in what it leaves over; then the rest.
import type { Counted } from '../testReport.ts';
import { together, vitestRun } from '../vitestRun.ts';

export const CONFIG = ['-c', 'vitest.e2e.config.ts'];

/** Every run is taken, whatever becomes of the one before. `before`: what is taken before the tours. */
export async function allInTurn(before: () => Promise<unknown> = () => Promise.resolve()): Promise<Counted> {
  const beside = async (): Promise<Counted> => {
    await before();
    return run('tours', true);
  };
  const [spoken, tours] = await Promise.all([run('spoken'), beside()]);
  return together([spoken, tours, await run('timed'), await run('seen')]);
}

const run = (project: string, aside = false): Promise<Counted> => vitestRun(`e2e-${project}`, [...CONFIG, '--project', project], aside);

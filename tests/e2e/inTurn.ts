// The end-to-end tests in turn: what is spoken takes its real time and little of the computer, so the tours are taken beside it, in what it
// leaves over; then the rest.
import { spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import { setPriority } from 'node:os';
import { type Counted, counted } from '../testReport.ts';

interface Run extends Counted {
  readonly green: boolean;
}

export const CONFIG = ['run', '-c', 'vitest.e2e.config.ts'];
/** Of the system: nothing that runs beside it has to wait for it. */
const BEHIND = 10;

/** Every run is taken, whatever becomes of the one before. */
export async function allInTurn(): Promise<Counted> {
  const [spoken, tours] = await Promise.all([run('spoken'), run('tours', true)]);
  const runs = [spoken, tours, await run('timed'), await run('seen')];
  return {
    passed: runs.reduce((sum, { passed }) => sum + passed, 0),
    // One that ended badly has failed, whatever it counted.
    all: runs.reduce((sum, { green, passed, all }) => sum + (green ? all : Math.max(passed + 1, all)), 0),
    failures: runs.flatMap(({ failures }) => failures),
  };
}

/** `aside`: while something else runs, after which what it said is shown. */
async function run(project: string, aside = false): Promise<Run> {
  const file = `node_modules/.cache/e2e-${project}.json`;
  rmSync(file, { force: true });
  const args = [...CONFIG, '--project', project, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const child = spawn('node_modules/.bin/vitest', args, { stdio: ['ignore', aside ? 'pipe' : 'inherit', aside ? 'pipe' : 'inherit'] });
  if (aside && child.pid !== undefined) setPriority(child.pid, BEHIND);
  const said: Buffer[] = [];
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (some: Buffer) => said.push(some));
  const status = await new Promise((over) => child.on('close', over).on('error', () => over(1)));
  process.stdout.write(Buffer.concat(said));
  return { green: status === 0, ...counted(file) };
}

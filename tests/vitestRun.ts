// One run of vitest in a process of its own, and what its report says.
import { spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import { setPriority } from 'node:os';
import { counted, type Counted } from './testReport.ts';

/** Of the system: nothing that runs beside it has to wait for it. */
const BEHIND = 10;

/** `name`: of the report; `aside`: while something else runs, after which what it said is shown. A run that ended badly has failed, whatever it counted. */
export async function vitestRun(name: string, args: readonly string[], aside = false): Promise<Counted> {
  const file = `node_modules/.cache/${name}.json`;
  rmSync(file, { force: true });
  const child = spawn('node_modules/.bin/vitest', ['run', ...args, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`], {
    stdio: ['ignore', aside ? 'pipe' : 'inherit', aside ? 'pipe' : 'inherit'],
  });
  if (aside && child.pid !== undefined) setPriority(child.pid, BEHIND);
  const said: Buffer[] = [];
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (some: Buffer) => said.push(some));
  const status = await new Promise((over) => child.on('close', over).on('error', () => over(1)));
  process.stdout.write(Buffer.concat(said));
  const { passed, all, failures } = counted(file);
  if (status === 0 || failures.length > 0) return { passed, all, failures };
  return { passed, all: Math.max(passed + 1, all), failures: [`${name}: ended with ${String(status)}`] };
}

export const together = (runs: readonly Counted[]): Counted => ({
  passed: runs.reduce((sum, { passed }) => sum + passed, 0),
  all: runs.reduce((sum, { all }) => sum + all, 0),
  failures: runs.flatMap(({ failures }) => failures),
});

// Runs every check, each even if one before it failed, and closes with what failed and a line that sums them.
import { spawn } from 'node:child_process';
import { allInTurn } from './e2e/inTurn.ts';
import { ALL } from './programs/programs.ts';
import { makeReady } from './programs/ready.ts';
import type { Counted } from './testReport.ts';
import { vitestRun } from './vitestRun.ts';

interface Stage {
  readonly name: string;
  run(): Promise<Counted>;
}

const PASSED: Counted = { passed: 1, all: 1, failures: [] };

/** Those of a row run beside one another. */
const rows: readonly (readonly Stage[])[] = [
  [{ name: 'browsers and sound', run: programs }],
  [command('types', 'run', 'types'), command('lint', 'run', 'lint'), command('layout', 'run', 'layout'), command('unused code', 'run', 'unused')],
  [command('build', 'run', 'build')],
  [command('size', 'run', 'size'), command('add-on lint', 'run', 'lint:addon')],
  tests(),
];

/** First, so that nothing that tests ever installs anything. */
function programs(): Promise<Counted> {
  try {
    makeReady(ALL);
    return Promise.resolve(PASSED);
  } catch (error) {
    return Promise.resolve({ passed: 0, all: 1, failures: [error instanceof Error ? error.message : String(error)] });
  }
}

/** A stage that is one check: it passes or it fails. What it says is shown when it is over. */
function command(name: string, ...args: string[]): Stage {
  return {
    name,
    run: () =>
      new Promise((over) => {
        const child = spawn('npm', args, { stdio: ['ignore', 'pipe', 'pipe'] });
        const said: Buffer[] = [];
        for (const stream of [child.stdout, child.stderr]) stream.on('data', (some: Buffer) => said.push(some));
        const end = (status: number | null): void => {
          process.stdout.write(Buffer.concat(said));
          over(status === 0 ? PASSED : { passed: 0, all: 1, failures: [name] });
        };
        child.on('close', end).on('error', () => end(1));
      }),
  };
}

/** The unit tests are taken beside what is spoken, which takes its real time and little of the computer. */
function tests(): readonly Stage[] {
  let unitIsOver: (count: Counted) => void;
  const unit = new Promise<Counted>((over) => (unitIsOver = over));
  return [
    { name: 'unit tests', run: () => unit },
    { name: 'end-to-end tests', run: () => allInTurn(async () => unitIsOver(await vitestRun('unit', ['--config', 'vitest.config.ts'], true))) },
  ];
}

async function taken({ name, run }: Stage): Promise<Counted & { name: string }> {
  const began = performance.now();
  const count = await run();
  const failed = count.all - count.passed;
  console.log(`=== ${name}: ${failed === 0 ? '' : `${failed} failed, `}${Math.round((performance.now() - began) / 1000)} s`);
  return { name, ...count };
}

const counts: (Counted & { name: string })[] = [];
for (const row of rows) {
  console.log(`\n=== ${row.map(({ name }) => name).join(', ')}`);
  counts.push(...(await Promise.all(row.map(taken))));
}
const passed = counts.reduce((sum, count) => sum + count.passed, 0);
const all = counts.reduce((sum, count) => sum + count.all, 0);
console.log('');
for (const count of counts) console.log(`${count.passed === count.all ? 'ok    ' : 'FAILED'} ${count.name}`);
for (const failure of counts.flatMap(({ failures }) => failures)) console.log(`FAILED ${failure}`);
console.log(`${passed} passed, ${all - passed} failed`);
process.exitCode = passed === all ? 0 : 1;

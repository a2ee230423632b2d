// Runs every check, each even if one before it failed, and closes with a line that sums them.
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { allInTurn } from './e2e/inTurn.ts';
import { ALL } from './programs/programs.ts';
import { makeReady } from './programs/ready.ts';
import { counted } from './testReport.ts';

type Count = { passed: number; failed: number; failures?: readonly string[] };
type Stage = { name: string; run: () => Count | Promise<Count> };

const stages: Stage[] = [
  { name: 'browsers and sound', run: programs },
  command('types', 'npm', 'run', 'types'),
  command('lint', 'npm', 'run', 'lint'),
  command('layout', 'npm', 'run', 'layout'),
  command('unused code', 'npm', 'run', 'unused'),
  command('build', 'npm', 'run', 'build'),
  command('size', 'npm', 'run', 'size'),
  command('add-on lint', 'npm', 'run', 'lint:addon'),
  vitest('unit tests', 'vitest.config.ts'),
  { name: 'end-to-end tests', run: () => allInTurn().then(({ passed, all, failures }) => ({ passed, failed: all - passed, failures })) },
];

/** First, so that nothing that tests ever installs anything. */
function programs(): Count {
  try {
    makeReady(ALL);
    return { passed: 1, failed: 0 };
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    return { passed: 0, failed: 1 };
  }
}

/** A stage that is one check: it passes or it fails. */
function command(name: string, program: string, ...args: string[]): Stage {
  return { name, run: () => (succeeds(program, args) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 }) };
}

/** A stage of many tests. One that was skipped has not passed, so it counts as failed. */
function vitest(name: string, config: string): Stage {
  const file = `node_modules/.cache/${config}.json`;
  return {
    name,
    run: () => {
      rmSync(file, { force: true });
      const args = ['run', '--config', config, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
      const green = succeeds('node_modules/.bin/vitest', args);
      const { passed, all, failures } = counted(file);
      return { passed, failed: green ? all - passed : Math.max(1, all - passed), failures };
    },
  };
}

function succeeds(program: string, args: readonly string[]): boolean {
  return spawnSync(program, args, { stdio: ['ignore', 'inherit', 'inherit'] }).status === 0;
}

const counts: (Count & { name: string })[] = [];
for (const { name, run } of stages) {
  const began = performance.now();
  console.log(`\n=== ${name}`);
  const count = await run();
  if (count.failed > 0) console.log(`=== ${name}: ${count.failed} failed`);
  console.log(`=== ${name}: ${Math.round((performance.now() - began) / 1000)} s`);
  counts.push({ name, ...count });
}
const passed = counts.reduce((sum, count) => sum + count.passed, 0);
const failed = counts.reduce((sum, count) => sum + count.failed, 0);
console.log('');
for (const count of counts) console.log(`${count.failed === 0 ? 'ok    ' : 'FAILED'} ${count.name}`);
for (const failure of counts.flatMap(({ failures = [] }) => failures)) console.log(`FAILED ${failure}`);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;

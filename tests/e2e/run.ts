// `npm run e2e`: all of the end-to-end tests in turn, or those that are named: `npm run e2e -- tests/e2e/voice.test.ts`.
import { spawnSync } from 'node:child_process';
import { allInTurn, CONFIG } from './inTurn.ts';

const named = process.argv.slice(2);
if (named.length > 0) {
  process.exitCode = spawnSync('node_modules/.bin/vitest', ['run', ...CONFIG, ...named], { stdio: 'inherit' }).status ?? 1;
} else {
  const { passed, all } = await allInTurn();
  console.log(`${passed} of ${all} passed`);
  process.exitCode = passed === all ? 0 : 1;
}

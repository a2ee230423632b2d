// `npm run e2e` begins here: everything that the end-to-end tests drive must be there before their workers start.
import { ALL } from './programs.ts';
import { makeReady } from './ready.ts';

try {
  makeReady(ALL);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

// One trial: the place is spoiled in the copy, the tests that may notice are run, nearest first, and the place is mended.
import { readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';
import { join } from 'node:path';
import type { Failure } from './failure.ts';
import { spoiled, type Place } from './places.ts';
import type { Related } from './related.ts';
import type { Answer } from './runner.ts';
import type { Running } from './running.ts';

export interface Verdict {
  readonly outcome: Failure['by'] | 'survived';
  /** Which test noticed, and what it said. */
  readonly noticed: string;
  readonly milliseconds: number;
}

export interface Means {
  readonly root: string;
  readonly runner: Running;
  /** How long a test file takes, as it is known so far; a trial adds to it. */
  readonly took: Map<string, number>;
}

/** No further test is begun after the first; one test has the second. Both are longer where others work, too. */
const ENOUGH_MS = 10_000;
const LIMIT_MS = 30_000;
const busy = (): number => Math.max(1, (loadavg()[0] ?? 0) / availableParallelism());

export async function tried(place: Place, related: readonly Related[], { root, runner, took }: Means): Promise<Verdict> {
  const path = join(root, place.file);
  const sound = readFileSync(path, 'utf8');
  const began = performance.now();
  const told = (outcome: Verdict['outcome'], noticed: string): Verdict => ({ outcome, noticed, milliseconds: Math.round(performance.now() - began) });
  const asked = async (tests: readonly string[], enough = ENOUGH_MS): Promise<Answer | null> => {
    const answer = await runner.ask({ tests, changed: [place.file], milliseconds: enough * Math.sqrt(busy()) }, LIMIT_MS * busy());
    for (const [test, milliseconds] of Object.entries(answer?.took ?? {})) took.set(test, milliseconds);
    return answer;
  };
  const tests = related.map(({ test }) => test);
  let answer: Answer | null;
  try {
    writeFileSync(path, spoiled(sound, place));
    answer = await asked(tests);
    // Before it is said to survive, every test has run that asks the source itself, however slow it is.
    const owed = related.filter(({ test, distance }) => distance <= 1 && !(test in (answer?.took ?? {}))).map(({ test }) => test);
    if (answer?.failed === null && owed.length > 0) answer = await asked(owed, LIMIT_MS);
  } finally {
    writeFileSync(path, sound);
  }
  if (answer === null) return told('time', `of ${tests.slice(0, 3).join(', ')}`);
  const { failed } = answer;
  if (failed === null) return told('survived', '');
  // A test that was never seen to pass may fail of itself.
  if (!took.has(failed.file) && (await asked([failed.file]))?.failed !== null) throw new Error(`${failed.file} fails unspoiled`);
  return told(failed.by, `${failed.file}: ${failed.test}: ${failed.said}`);
}

// The long-lived test runner: a process of its own, so that a test that never ends can be ended. It is told test files, in
// order, and which source has changed; it answers with the first that fails by an assertion, or else by whatever way.
import { resolve } from 'node:path';
import { BaseSequencer, createVitest, type Reporter, type TestSpecification } from 'vitest/node';
import { failureOf, type Failure } from './failure.ts';

export interface Order {
  readonly tests: readonly string[];
  readonly changed: readonly string[];
  /** After these no further test is begun. */
  readonly milliseconds: number;
}

export interface Answer {
  readonly failed: Failure | null;
  /** Milliseconds of each test file that was run to its end. */
  readonly took: Readonly<Record<string, number>>;
}

class AsGiven extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files;
  }
}

let failed: Failure | null = null;
let took: Record<string, number> = {};
let until = 0;
/** Mended by now, but known as they were. */
let mended: readonly string[] = [];

const reporter: Reporter = {
  onTestCaseResult(testCase) {
    process.send?.('goes on');
    if (performance.now() > until) void vitest.cancelCurrentRun('test-failure');
    const result = testCase.result();
    if (result.state !== 'failed' || failed?.by === 'assertion') return;
    const found = failureOf(testCase.module.relativeModuleId, testCase.fullName, result.errors);
    if (failed === null || found.by === 'assertion') failed = found;
    if (failed.by === 'assertion') void vitest.cancelCurrentRun('test-failure');
  },
  onTestModuleEnd(module) {
    const errors = module.errors();
    if (errors.length > 0) failed ??= failureOf(module.relativeModuleId, 'while it was read', errors);
    const { duration, collectDuration, setupDuration } = module.diagnostic();
    if (module.state() === 'passed' && performance.now() < until) took[module.relativeModuleId] = Math.round(duration + collectDuration + setupDuration);
  },
};

const vitest = await createVitest(
  'test',
  {
    watch: false,
    isolate: false,
    fileParallelism: false,
    maxWorkers: 1,
    pool: 'forks',
    // Whoever asks keeps the time.
    testTimeout: 3_600_000,
    reporters: [reporter],
    cache: false,
    sequence: { shuffle: false, sequencer: AsGiven },
  },
  { cacheDir: resolve('.vite') },
);
await vitest.standalone();
const specifications = await vitest.globTestSpecifications();

async function follow({ tests, changed, milliseconds }: Order): Promise<Answer> {
  failed = null;
  took = {};
  until = performance.now() + milliseconds;
  for (const file of [...mended, ...changed]) vitest.invalidateFile(resolve(file));
  mended = changed;
  const wanted = tests.flatMap((test) => specifications.filter(({ moduleId }) => moduleId === resolve(test)));
  const { unhandledErrors } = await vitest.runTestSpecifications(wanted, false);
  if (unhandledErrors.length > 0) failed ??= failureOf(tests[0] ?? '', 'outside a test', unhandledErrors as Error[]);
  return { failed, took };
}

process.on('message', (order: Order) => void follow(order).then((answer) => process.send?.(answer)));
process.on('disconnect', () => process.exit());
process.send?.('ready');

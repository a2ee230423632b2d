// Runs jobs of the bench side by side, one process a core, and tells as each comes in.
import { execFile } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { promisify } from 'node:util';
import type { MethodName } from './jobs.ts';
import type { Summary } from './result.ts';

export interface Job {
  readonly method: MethodName;
  readonly family: string;
}

const execute = promisify(execFile);

/** One process a core, or as many as BENCH_WORKERS says where the machine has other work. */
const WORKERS = Number(process.env['BENCH_WORKERS'] ?? availableParallelism());
/** What a job prints about its sweeps may be long. */
const LONGEST = 64 * 1024 * 1024;

/** The summaries of the jobs, keyed by method and family. */
export async function runJobs(jobs: readonly Job[], runs: number, tell: (sentence: string) => void): Promise<(job: Job) => Summary> {
  const calls = jobs.map((job) => [job.method, job.family, String(runs)]);
  const summaries = await sideBySide<Summary>('tests/bench/sweep/job.ts', calls, (summary, [method, family], done) =>
    tell(`${done}/${jobs.length} ${family}: ${method}: ${inWords(summary)}`),
  );
  const known = new Map(jobs.map((job, index) => [keyOf(job), summaries[index]]));
  return (job) => {
    const summary = known.get(keyOf(job));
    if (!summary) throw new Error(`Nothing was measured for ${keyOf(job)}.`);
    return summary;
  };
}

/** Runs a script once for each list of arguments, and gives what each run printed, in their order. */
export async function sideBySide<Printed>(
  script: string,
  calls: readonly (readonly string[])[],
  tell: (printed: Printed, call: readonly string[], done: number) => void,
): Promise<Printed[]> {
  const printed: Printed[] = [];
  const waiting = [...calls.entries()];
  let done = 0;
  const worker = async (): Promise<void> => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const [index, call] = next;
      const { stdout } = await execute(process.execPath, ['manifest/run.mjs', script, ...call], { maxBuffer: LONGEST });
      printed[index] = JSON.parse(stdout) as Printed;
      tell(printed[index], call, ++done);
    }
  };
  await Promise.all(Array.from({ length: WORKERS }, worker));
  return printed;
}

const keyOf = ({ method, family }: Job): string => `${method} | ${family}`;

const inWords = (summary: Summary): string =>
  `${summary.holds.toFixed(1)} holds, ${summary.seconds.toFixed(0)} s, error ${summary.medianError.toFixed(2)} and ` +
  `${summary.tailError.toFixed(2)} (95 %), within a step ${summary.within.toFixed(3)}, stated ${summary.stated.toFixed(3)}`;

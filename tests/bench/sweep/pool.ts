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

/** The summaries of the jobs, keyed by method and family. */
export async function runJobs(jobs: readonly Job[], runs: number, tell: (sentence: string) => void): Promise<(job: Job) => Summary> {
  const done = new Map<string, Summary>();
  const waiting = [...jobs];
  const worker = async (): Promise<void> => {
    for (let job = waiting.shift(); job; job = waiting.shift()) {
      const args = ['manifest/run.mjs', 'tests/bench/sweep/job.ts', job.method, job.family, String(runs)];
      const { stdout } = await execute(process.execPath, args);
      const summary = JSON.parse(stdout) as Summary;
      done.set(keyOf(job), summary);
      tell(`${done.size}/${jobs.length} ${job.family}: ${job.method}: ${inWords(summary)}`);
    }
  };
  await Promise.all(Array.from({ length: availableParallelism() }, worker));
  return (job) => {
    const summary = done.get(keyOf(job));
    if (!summary) throw new Error(`Nothing was measured for ${keyOf(job)}.`);
    return summary;
  };
}

const keyOf = ({ method, family }: Job): string => `${method} | ${family}`;

const inWords = (summary: Summary): string =>
  `${summary.holds.toFixed(1)} holds, ${summary.seconds.toFixed(0)} s, error ${summary.medianError.toFixed(2)} and ` +
  `${summary.tailError.toFixed(2)} (95 %), within a step ${summary.within.toFixed(3)}, stated ${summary.stated.toFixed(3)}`;

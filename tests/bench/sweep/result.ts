// What one simulated sweep cost and gave, and what a thousand of them come to.
import type { Verdict } from '../../../src/sweep/verdict.ts';

export interface SweepResult {
  readonly holds: number;
  readonly seconds: number;
  /** The centre found, the value chosen, and the stated chance that the true centre lies within a step of it. */
  readonly centre: number;
  readonly chosen: number;
  readonly stated: number;
  readonly ended: 'band' | 'past the limit' | 'nothing' | 'gave up';
  readonly truth: number;
}

/** What a hold costs whoever makes it: dialling, then the full time or the two seconds after which a failure is plain. */
export class Stopwatch {
  #at = 0;
  seconds = 0;
  holds = 0;
  count(value: number, verdict: Verdict): void {
    const steady = verdict.light === 'steady' && (verdict.arrows === 'none' || verdict.arrows === 'balanced');
    this.seconds += 4 + 0.3 * Math.abs(value - this.#at) + (steady ? 5 : 2);
    this.holds++;
    this.#at = value;
  }
}

export interface Summary {
  readonly holds: number;
  readonly seconds: number;
  readonly medianError: number;
  readonly tailError: number;
  readonly within: number;
  readonly stated: number;
  readonly confidentlyWrong: number;
  readonly pastTheLimit: number;
}

/** Errors are of the centre; `within` is the share of chosen values within one step of the truth. */
export function summarise(results: readonly SweepResult[]): Summary {
  const bands = results.filter(({ ended }) => ended === 'band');
  const errors = bands.map(({ centre, truth }) => Math.abs(centre - truth)).sort((a, b) => a - b);
  const mean = (of: (result: SweepResult) => number, over = results) => over.reduce((sum, r) => sum + of(r), 0) / over.length;
  return {
    holds: mean(({ holds }) => holds),
    seconds: mean(({ seconds }) => seconds),
    medianError: errors[Math.floor(errors.length / 2)] ?? 0,
    tailError: errors[Math.floor(errors.length * 0.95)] ?? 0,
    within: mean(({ chosen, truth }) => Number(Math.abs(chosen - truth) <= 1), bands),
    stated: mean(({ stated }) => stated, bands),
    confidentlyWrong: bands.filter(({ stated, chosen, truth }) => stated >= 0.95 && Math.abs(chosen - truth) > 2).length / results.length,
    pastTheLimit: results.filter(({ ended }) => ended === 'past the limit').length / results.length,
  };
}

// What two sweeps of one situation can show, beside what one sweep can: `logbook/combined.ts` compares them.

export interface Comparison {
  /** How far apart, and how far chance may bring them apart with 95 %, in steps. */
  readonly apart: number;
  readonly allowed: number;
  readonly differ: boolean;
  /** Odds that they measured two centres, against one. */
  readonly bayesFactor: number;
}

/** Two sweeps that differ by more than their intervals allow, by strong evidence: a trouble to be named. */
export interface SweepsDiffer extends Comparison {
  readonly trouble: 'sweeps differ';
}

// The trainer: one hold after another, what a round came to, and where the person stands over all of them.
import type { TrainingHold, TrainingRound } from '../practice/training/round.ts';
import type { Confusion, Reliability } from '../practice/training/score.ts';

export interface TrainingWords {
  readonly title: string;
  readonly about: string;
  readonly begin: string;
  readonly another: string;
  readonly hold: {
    /** Names the hold for those who hear the screen. */
    readonly label: string;
    readonly title: (number: number, of: number) => string;
    readonly answers: string;
    readonly ready: string;
    readonly watch: string;
    readonly over: string;
    readonly tooSoon: string;
    /** What it was and how the answer counts, said as well as shown. */
    readonly was: (hold: TrainingHold) => string;
  };
  readonly round: {
    readonly label: string;
    readonly right: (confusion: Confusion) => string;
    /** What was taken for what, the costly slips first. */
    readonly slips: (confusion: Confusion) => readonly string[];
    /** The one thing to watch for next. */
    readonly watchFor: (confusion: Confusion) => string;
    readonly level: (level: number, last: number) => string;
  };
  readonly standing: {
    readonly title: string;
    /** Over the rounds that count. */
    readonly reliability: (reliability: Reliability) => readonly string[];
    readonly kept: (rounds: number, newest: TrainingRound['at']) => readonly string[];
    readonly tooFew: (enough: number, sofar: number) => string;
    readonly own: { readonly label: string; readonly note: (lapse: number) => string };
    readonly forget: string;
    readonly forgetNow: string;
    readonly keep: string;
  };
}

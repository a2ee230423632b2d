// How sure it is that a word was said and not something else: log odds by a logistic rule over what comparing it told.
// The weights were fitted to four speakers' digits with rooms, noise, talk and clicks, and checked on each speaker with
// weights fitted to the other three.

export interface Likeness {
  /** Distance to the word against what is usual for it, log. */
  readonly apart: number;
  /** Distance to the word against the next nearest, log. */
  readonly lead: number;
  /** Length against the word's, log. */
  readonly length: number;
  /** The worst 80 ms against what is usual, ratio. */
  readonly worst: number;
  /** The share of standing still beyond the usual. */
  readonly warped: number;
}

const WEIGHTS = { one: 5.88, apart: -7.64, lead: -9.87, length: 2.12, uneven: -13.75, worst: -2.89, warped: -30.55 };

/** Log odds; 0 is as likely as not. */
export function sureness({ apart, lead, length, worst, warped }: Likeness): number {
  return (
    WEIGHTS.one +
    WEIGHTS.apart * apart +
    WEIGHTS.lead * lead +
    WEIGHTS.length * length +
    WEIGHTS.uneven * length * length +
    WEIGHTS.worst * worst +
    WEIGHTS.warped * warped
  );
}

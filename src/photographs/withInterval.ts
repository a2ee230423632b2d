// A number as it was measured, with its 95 % interval.

export interface WithInterval {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Standard deviations to either side that hold 95 % of a normal distribution. */
export const NORMAL_MARGIN = 1.959964;

/** As if the interval were that of a normal distribution. */
export const doubtOf = ({ low, high }: WithInterval): number => (high - low) / (2 * NORMAL_MARGIN);

export const around = (value: number, margin: number): WithInterval => ({ value, low: value - margin, high: value + margin });

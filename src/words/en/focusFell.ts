// English: how far from the target focus fell, and a correction with its interval.
import type { WithInterval } from '../../photographs/withInterval.ts';
import { write } from './write.ts';

/** The size of a length at the target, in millimetres. */
export const lengthAtTarget = (value: number): string => write.unit(Math.abs(value), 'millimeter', Math.abs(value) < 10 ? 1 : 0);

/** "12 mm ± 3 mm in front of the target". */
export const focusFell = ({ value, low, high }: WithInterval): string =>
  `${lengthAtTarget(value)} ± ${lengthAtTarget((high - low) / 2)} ${value < 0 ? 'in front of the target' : 'behind the target'}`;

/** "+2.4 (95% between +1.8 and +3)", in steps. */
export const correctionBetween = ({ value, low, high }: WithInterval): string =>
  `${write.signed(value, 1)} (95% between ${write.signed(low, 1)} and ${write.signed(high, 1)})`;

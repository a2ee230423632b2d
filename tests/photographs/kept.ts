// What is kept in a snapshot, to seven digits; that something throws is kept, too, so that a change which makes it throw differs by its snapshot.
import { sevenDigits } from '../kept/sevenDigits.ts';

export function kept(of: () => unknown): unknown {
  try {
    return sevenDigits(of());
  } catch {
    return 'throws';
  }
}

/** One number for many: each counts by its place. */
export const summed = (values: ArrayLike<number>): number => Array.from(values).reduce((sum, value, at) => sum + value * ((at % 97) + 1), 0);

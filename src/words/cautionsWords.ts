// Where something at the bench may hurt, break or mislead.
import type { Caution } from '../optics/setUp/caution.ts';

export interface CautionsWords {
  readonly title: string;
  /** Before one that may hurt. */
  readonly takeCare: string;
  readonly caution: (caution: Caution) => string;
}

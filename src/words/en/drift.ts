// English: what tells that the focus may have moved; the odds stand with what to check.
import type { Drift } from '../../sweep/end/drift.ts';
import { write } from './write.ts';

export const drifted = ({ afterHold }: Pick<Drift, 'afterHold'>): string =>
  `The last answers do not fit the first ${write.number(afterHold)}. The focus has probably moved.`;

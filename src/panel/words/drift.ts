// What tells that the focus may have moved, in words; the odds stand with what to check.
import type { Drift } from '../../sweep/end/drift.ts';

export const driftInWords = ({ afterHold }: Drift): string => `The holds after the first ${afterHold} tell of another band.`;

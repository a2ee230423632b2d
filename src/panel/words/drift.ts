// The evidence that the focus moved, in words.
import type { Drift } from '../../sweep/end/drift.ts';
import { odds } from '../../voice/checks.ts';

export const driftInWords = (drift: Drift): string =>
  `The holds after the first ${drift.afterHold} tell of another band: ${odds(drift)} that the focus moved.`;

// How a person works who has not said how.
import { seconds, type Seconds } from '../units.ts';
import type { Manner } from './manner.ts';

/** Common practice, no source. */
export const USUAL_HOLD_TIME: Seconds = seconds(5);

export const USUAL_MANNER: Manner = { care: 'standard', order: 'fewest', pace: { set: 'own' }, holdTime: USUAL_HOLD_TIME };

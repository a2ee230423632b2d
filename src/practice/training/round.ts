// A finished round of training as it is kept: when, and for each of its holds what the light did, on which level, and
// what the person told.
import * as v from 'valibot';
import { Moment } from '../../storedUnits.ts';
import { Light } from '../../sweep/storedVerdict.ts';
import { LAST_LEVEL, PLAIN_LEVEL } from './levels.ts';

export const TrainingLight = v.picklist(['steady', 'late', 'flicker', 'dark']);
export type TrainingLight = v.InferOutput<typeof TrainingLight>;

export const HOLDS_A_ROUND = 10;

const Level = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(LAST_LEVEL));

/** `told`: as in a sweep, `untold` when it failed and nobody said how. */
const TrainingHold = v.object({ shown: TrainingLight, told: Light, level: Level });
export type TrainingHold = v.InferOutput<typeof TrainingHold>;

export const TrainingRound = v.object({
  at: Moment,
  /** Where the ladder stood at the end; the next round begins there. */
  level: Level,
  holds: v.pipe(v.array(TrainingHold), v.length(HOLDS_A_ROUND)),
});
export type TrainingRound = v.InferOutput<typeof TrainingRound>;

/** Did the hold count as it should: for the value or against it? */
export const countedRight = ({ shown, told }: TrainingHold): boolean => (shown === 'steady') === (told === 'steady');

/** Was the light named as it was? */
export const namedRight = ({ shown, told }: TrainingHold): boolean => shown === told;

/** Does it measure the person and not the ladder? Steady and dark lights do, and whatever was plain to see. */
export const isPlain = ({ shown, level }: TrainingHold): boolean => shown === 'steady' || shown === 'dark' || level <= PLAIN_LEVEL;

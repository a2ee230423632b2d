// What rounds say of the person: what was taken for what, how reliable the plain holds are, and the share of lapses that
// the belief may reckon with.
import { countedRight, isPlain, namedRight, type TrainingHold, type TrainingLight, type TrainingRound } from './round.ts';
import { scoreInterval } from './scoreInterval.ts';

/** How often one kind of light was shown, and told as something else. */
interface Missed {
  readonly shown: number;
  readonly missed: number;
}

/** The slips worth telling: those that move an end of the band, and those between kinds of failing. */
export interface Confusion {
  readonly lateAsSteady: Missed;
  readonly flickerAsSteady: Missed;
  readonly darkAsSteady: Missed;
  readonly steadyAsFailing: Missed;
  /** Failing, told as failing, but as the wrong kind. */
  readonly wrongKind: Missed;
  /** As each hold was told: failing counts right whichever way it is said to fail. */
  readonly right: number;
  readonly of: number;
}

export function confusionOf(holds: readonly TrainingHold[]): Confusion {
  const asSteady = (light: TrainingLight): Missed => {
    const all = holds.filter(({ shown }) => shown === light);
    return { shown: all.length, missed: all.filter((hold) => !countedRight(hold)).length };
  };
  const failing = holds.filter(({ shown }) => shown !== 'steady');
  return {
    lateAsSteady: asSteady('late'),
    flickerAsSteady: asSteady('flicker'),
    darkAsSteady: asSteady('dark'),
    steadyAsFailing: asSteady('steady'),
    wrongKind: {
      shown: failing.length,
      missed: failing.filter((hold) => countedRight(hold) && hold.told !== 'untold' && !namedRight(hold)).length,
    },
    right: holds.filter(countedRight).length,
    of: holds.length,
  };
}

/** Older rounds say less of the person than of the beginner they were. */
const ROUNDS_THAT_COUNT = 8;
/** Nine plain holds in ten counted right: half the holds of a sweep are near an end (common practice, no source). */
export const RELIABLE = 0.9;

export interface Reliability {
  readonly right: number;
  readonly of: number;
  /** 95 % score interval of the share counted right. */
  readonly low: number;
  readonly high: number;
  /** Only when the lower bound passes. */
  readonly reached: boolean;
}

/** Newest round last. */
export function reliabilityOf(rounds: readonly TrainingRound[]): Reliability {
  const plain = plainHolds(rounds);
  const right = plain.filter(countedRight).length;
  const { low, high } = scoreInterval(right, plain.length);
  return { right, of: plain.length, low, high, reached: low >= RELIABLE };
}

/** Plain holds before an own share of lapses may be used. */
export const ENOUGH_FOR_LAPSES = 40;
const LEAST_LAPSE = 0.005;
const MOST_LAPSE = 0.1;
/** The usual two in a hundred, believed as firmly as fifty holds of one's own (common practice, no source). */
const USUAL = { lapses: 1, of: 50 };

/**
 * The person's share of lapses, or null before there is enough to go by: the worse of "steady taken for failing" and
 * "plainly failing taken for steady", each drawn towards the usual share, since the belief has one figure for both.
 * In steps of half a per cent. How soft an end is belongs to the lens as much as to the person, and no value is dialled
 * here, so it is not measured.
 */
export function lapseOf(rounds: readonly TrainingRound[]): number | null {
  const plain = plainHolds(rounds);
  if (plain.length < ENOUGH_FOR_LAPSES) return null;
  const shareOf = (holds: readonly TrainingHold[]): number => (holds.filter((hold) => !countedRight(hold)).length + USUAL.lapses) / (holds.length + USUAL.of);
  const share = Math.max(shareOf(plain.filter(({ shown }) => shown === 'steady')), shareOf(plain.filter(({ shown }) => shown !== 'steady')));
  return Math.min(MOST_LAPSE, Math.max(LEAST_LAPSE, Math.round(share / LEAST_LAPSE) * LEAST_LAPSE));
}

const plainHolds = (rounds: readonly TrainingRound[]): TrainingHold[] => rounds.slice(-ROUNDS_THAT_COUNT).flatMap(({ holds }) => holds.filter(isPlain));

// English: the trainer.
import { countedRight, namedRight, type TrainingHold, type TrainingLight } from '../../practice/training/round.ts';
import { RELIABLE, type Confusion } from '../../practice/training/score.ts';
import type { TrainingWords } from '../trainingWords.ts';
import { write } from './write.ts';
import { taught } from '../taught.ts';

type Slip = Exclude<keyof Confusion, 'right' | 'of'>;

const WAS: Readonly<Record<TrainingLight, string>> = {
  steady: 'It was steady.',
  late: 'It came late.',
  flicker: 'It flickered.',
  dark: 'It stayed dark.',
};

/** The costly ones first. */
const SLIPS: Readonly<Record<Slip, string>> = {
  lateAsSteady: 'Late, answered as steady',
  flickerAsSteady: 'Flickering, answered as steady',
  darkAsSteady: 'Dark, answered as steady',
  steadyAsFailing: 'Steady, answered as failing',
  wrongKind: 'Failing, answered as another kind',
};

/** Of two that come as often, the one that can be unlearned best. */
const WATCH_FOR: Readonly<Record<Slip, string>> = {
  lateAsSteady: 'Look at the light before you press. A late light is dark for its first moment.',
  flickerAsSteady: 'Keep your eye on the light until the time is up. One short gap is a flicker.',
  steadyAsFailing: 'Say that it failed only when you saw it fail. Your own blink looks like a gap.',
  wrongKind: 'Dark first, then on: late. On first, then a gap: flicker. Never on: nothing.',
  get darkAsSteady() {
    return `For a light that never came on, say “${taught('nothing')}”.`;
  },
};

const keysOf = (record: Readonly<Record<Slip, string>>): readonly Slip[] => Object.keys(record) as Slip[];

function counts(hold: TrainingHold): string {
  if (namedRight(hold)) return 'Right.';
  if (!countedRight(hold)) return 'No.';
  return hold.told === 'untold' ? 'Right, it failed.' : 'Right, it failed, but in another way.';
}

export const words: TrainingWords = {
  title: 'Train your eye',
  about:
    'Ten holds of two seconds on the practice light. Answer each as in a sweep: by voice, by key, by pointer or by the one switch. ' +
    'After two right answers in a row, late and flickering lights become harder to see. After a wrong one, they become easier.',
  begin: 'Begin a round',
  another: 'Another round',
  hold: {
    label: 'Training hold',
    title: (number, of) => `Hold ${write.number(number)} of ${write.number(of)}`,
    answers: 'Answers understood now',
    ready: 'Press when you are ready.',
    watch: 'Watch the light.',
    over: 'The time is up. What did you see?',
    tooSoon: 'Not yet. Hold until the time is up.',
    was: (hold) => `${counts(hold)} ${WAS[hold.shown]}`,
  },
  round: {
    label: 'This round',
    right: ({ right, of }) => `${write.number(right)} of ${write.number(of)} right`,
    slips: (confusion) =>
      keysOf(SLIPS)
        .filter((slip) => confusion[slip].missed > 0)
        .map((slip) => `${SLIPS[slip]}: ${write.number(confusion[slip].missed)} of ${write.number(confusion[slip].shown)}.`),
    watchFor(confusion) {
      const [worst] = keysOf(WATCH_FOR).toSorted((a, b) => confusion[b].missed - confusion[a].missed);
      return worst && confusion[worst].missed > 0 ? WATCH_FOR[worst] : 'No slip in this round.';
    },
    level: (level, last) => `You are on level ${write.number(level)} of ${write.number(last)}.`,
  },
  standing: {
    title: 'Your reliability',
    reliability: ({ right, of, low, high, reached }) => [
      `${write.number(right)} of ${write.number(of)} plain holds counted right.`,
      `So ${write.percent(Math.floor(low * 100) / 100)} to ${write.percent(Math.ceil(high * 100) / 100)} of your holds count right, 95% sure.`,
      reached ? 'That is reliable enough for a sweep.' : `For a sweep, the lower figure must reach ${write.percent(RELIABLE)}.`,
    ],
    kept: (rounds, newest) => [
      `${write.count(rounds, { one: '# round is kept', other: '# rounds are kept' })}, the newest from ${write.day(newest)}.`,
      'The last eight count, and of them only lights that are plain to see.',
    ],
    tooFew: (enough, sofar) =>
      `After ${write.count(enough, { one: '# plain hold', other: '# plain holds' })} a sweep can use your own slips. So far there ${write.count(sofar, { one: 'is #', other: 'are #' })}.`,
    own: {
      label: 'Use my own reliability',
      note: (lapse) => `From the next sweep on, it allows for ${write.percent(lapse, 1)} spoilt holds of yours instead of the usual ${write.percent(0.02)}.`,
    },
    forget: 'Forget my rounds',
    forgetNow: 'Forget them',
    keep: 'Keep them',
  },
};

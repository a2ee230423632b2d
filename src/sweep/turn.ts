// What comes after a verdict: on to the next value, an offer to finish, or a question about the focus. Everything that
// changes what is known ends here, so the three are judged in one place.
import { readiness, type Readiness } from './end/care.ts';
import { driftOf, STRONG, type Drift } from './end/drift.ts';
import { heldValues } from './end/ends.ts';
import { outcomeOf, type Outcome } from './end/outcome.ts';
import { statedOf } from './end/stated.ts';
import { believed, doubtedValues, retold, storiesOf, type Rival, type Story, type Weighed } from './end/story.ts';
import type { Effect, Prompt } from './effect.ts';
import type { Hold } from './hold.ts';
import { closingOf } from './next/closing.ts';
import { reasonToStart } from './next/reason.ts';
import { suggest, type Suggestion } from './next/suggestion.ts';
import type { Plan } from './plan.ts';
import type { Phase, SweepState } from './state.ts';
import { say, sound, wake } from './step.ts';
import { standing } from './toEnter.ts';
import { timeSpent } from './timeSpent.ts';
import { carriedOver } from './transfer/carried.ts';
import { isTransfer } from './transfer/joint.ts';
import { wayToTurn, type TurnWay } from './transfer/turning.ts';
import type { Trouble } from './trouble/trouble.ts';
import { isHopeless, leavesNothing, troublesOf } from './trouble/troublesOf.ts';
import { seconds, type Moment } from '../units.ts';

type Misjudged = Extract<Story, { is: 'misjudged' }>;

/** Odds of misjudged holds that are worth holding them again before the finish. */
const WORTH_A_HOLD = 4;
/** A story so much less likely than another is still held against it; one so much likelier explains it. */
const COMPARABLE = 10;
const EXPLAINED = 3;

/** A state and what it asks for, before the event that led to it joins the journal. */
export interface Turn {
  readonly state: SweepState;
  readonly effects: readonly Effect[];
}

/** Everything of a state but where it stands in the loop. */
export type BetweenPhases = Omit<SweepState, 'phase'>;

/** Judges the holds so far and enters the phase that follows; `noted` is the hold just judged, to be read back. */
export function turn(judged: BetweenPhases, at: Moment, noted: Hold | null): Turn {
  const before = believing(judged);
  const { asOneBand, holds, stories } = before;
  const { readiness: enough, ready, hidden, next } = look(before);
  const seen = driftOf(asOneBand, holds, before.trustedUpTo);
  const strong = seen && seen.bayesFactor > STRONG ? seen : hidden;
  const doubted = strong && doubtedBy(before, strong.bayesFactor);
  const drift = strong && !doubted && !stories.some(({ bayesFactor }) => bayesFactor > EXPLAINED * strong.bayesFactor) ? strong : null;
  const troubles = [...troublesOf(before.belief, holds, drift, stories), ...before.troubles.filter(wasSeen)];
  const state = { ...before, troubles };
  const told = newIn(state, judged);
  if (drift) {
    const asked = { drift, ...rivalOf(stories, drift) };
    return enter(state, { name: 'checking', ...asked, next }, [say({ say: 'check focus', noted, ...asked, ...told })]);
  }
  const way = state.plan.transfer ? wayToTurn(state.plan.transfer, enough) : null;
  if (way) return enter(state, { name: 'turning', way, next }, [say(turnTheFocus(state.plan, way, noted))]);
  if ((ready && !doubted) || state.troubles.some(isHopeless)) {
    const outcome = currentOutcome(state, at);
    return enter(state, { name: 'offered', outcome, next }, [say({ say: 'offer', noted, outcome, look: hasLiveView(state.plan), ...doubt(state) })]);
  }
  const then = doubted ?? next;
  return dial(state, then, say({ say: 'next', noted, next: then, ...told }));
}

/** The likeliest story of the holds, believed where the odds are for it although it is rare. */
function believing(known: BetweenPhases): BetweenPhases {
  const { asOneBand, holds } = known;
  const stories = storiesOf(asOneBand, holds);
  const one = believed(stories);
  return { ...known, stories, belief: one ? retold(asOneBand, holds, one.story) : asOneBand };
}

/** A value whose verdict may have been a slip of tired eyes, to be held again before anything else is asked of the person. */
function doubtedBy({ stories, holds, skipped }: BetweenPhases, bayesFactor: number): Suggestion | null {
  const slip = stories.find((one): one is Weighed<Misjudged> => one.story.is === 'misjudged');
  if (!slip || slip.bayesFactor * COMPARABLE < bayesFactor) return null;
  const value = doubtedValues(holds, slip.story).find((doubted) => !skipped.includes(doubted));
  return value === undefined ? null : { value, reason: { because: 'doubted' } };
}

/** The likeliest story that these holds cannot tell from a focus that moved. */
function rivalOf(stories: readonly Weighed[], { bayesFactor }: Drift): { rival?: Rival } {
  const rival = stories.find(({ story }) => story.is !== 'misjudged');
  return rival && rival.story.is !== 'misjudged' && rival.bayesFactor * EXPLAINED >= bayesFactor ? { rival: rival.story.is } : {};
}

/** What was found in live view stays true. */
const wasSeen = (trouble: Trouble): boolean => trouble.trouble === 'focus moved' && trouble.seen;

/** The likeliest trouble, where it was not told before; the question about the focus tells of itself. */
function newIn(now: BetweenPhases, before: BetweenPhases): { trouble?: Trouble } {
  const [first] = now.troubles;
  if (!first || first.trouble === 'focus moved' || before.troubles.some(({ trouble }) => trouble === first.trouble)) return {};
  return { trouble: first };
}

/** The likeliest trouble that stands: while it does, nothing said of the outcome is certain. */
export function doubt({ troubles }: Pick<SweepState, 'troubles'>): { trouble?: Trouble } {
  const [trouble] = standing(troubles);
  return trouble ? { trouble } : {};
}

/** Is there a focus in live view that must still be sharp? */
export const hasLiveView = ({ practice, transfer }: Plan): boolean => practice === null && transfer === undefined;

export const turnTheFocus = (plan: Plan, way: TurnWay, noted: Hold | null): Prompt => ({
  say: 'turn the focus',
  noted,
  way,
  practice: plan.practice !== null,
});

/** Asks for a value to be dialled in; with a counted pace the hold begins by itself when the time to dial is over. */
export const dial = (state: BetweenPhases, next: Suggestion, prompt: Effect): Turn => enter(state, { name: 'dialling', next }, [prompt, ...countIn(state)]);

/** Is the care met, and which value would be held next? `hidden`: strong evidence of a shift that harms. */
export function look(known: BetweenPhases): Looked {
  const { belief, holds, plan, dialled, skipped, trustedUpTo } = known;
  const { care, order, holdTime } = plan.manner;
  const enough = readiness(belief, heldValues(counting(known)), care);
  const { hidden, test } = closingOf({ belief, holds, readiness: enough, care, skipped, trustedUpTo });
  if (test) return { readiness: enough, ready: false, hidden, next: test };
  const doubted = care !== 'quick' && enough.ready && enough.as === 'band' ? doubtedBy(known, WORTH_A_HOLD * COMPARABLE) : null;
  if (doubted) return { readiness: enough, ready: false, hidden, next: doubted };
  const next = suggest({ belief, holds, readiness: enough, care, order, dialled, holdTime, skipped });
  const reason = next.reason.because === 'start' ? reasonToStart(next.value, plan.scale.step, plan.memory) : next.reason;
  return { readiness: enough, ready: enough.ready, hidden, next: { ...next, reason } };
}

/** The holds that count by the story that is believed. */
function counting({ holds, stories }: BetweenPhases): readonly Hold[] {
  const story = believed(stories)?.story;
  if (story?.is !== 'misjudged') return holds;
  const { from, to } = story;
  return holds.filter((_, at) => at < from || at > to);
}

interface Looked {
  readonly readiness: Readiness;
  /** Enough, and no closing hold is wanted. */
  readonly ready: boolean;
  readonly hidden: Drift | null;
  readonly next: Suggestion;
}

/** What would come out if the sweep ended at this moment; where the light fails everywhere, one lucky hold is no band. */
export function currentOutcome(known: BetweenPhases, at: Moment): Outcome {
  const { plan, belief, holds, spent, stories, journal, troubles } = known;
  const held = heldValues(counting(known));
  const tally = {
    holds: holds.length + spent.length,
    seconds: timeSpent(
      journal.map((event) => event.at),
      at,
    ),
  };
  if (isTransfer(plan)) return carriedOver(plan, belief, held, tally);
  const outcome = outcomeOf(belief, held, tally, () => statedOf(belief, stories));
  if (outcome.found !== 'beyond the scale' && troubles.some(leavesNothing)) return { found: 'nothing', tally };
  // Where every value holds, one that failed at a limit is no end of a band.
  const everywhere = outcome.found === 'past the limit' && troubles.some(({ trouble }) => trouble === 'lights everywhere');
  return everywhere ? { ...outcome, side: 'both', visible: null, bound: null } : outcome;
}

export const enter = (state: BetweenPhases, phase: Phase, effects: readonly Effect[]): Turn => ({ state: { ...state, phase }, effects });

function countIn({ plan }: BetweenPhases): Effect[] {
  const { pace } = plan.manner;
  if (pace.set === 'own') return [];
  const ticks = [3, 2, 1].filter((before) => before < pace.toDial);
  return [...ticks.map((before) => sound('count', seconds(pace.toDial - before))), wake('dial', pace.toDial)];
}

// What follows a verdict, as it was: the next value, the offer or the question about the focus, for series of bands that stay, move, drift,
// are misjudged or have a hole, at each care; and what would come out at that moment.
import { expect, test } from 'vitest';
import { storiesOf, type Weighed } from '../../src/sweep/end/story.ts';
import type { Plan } from '../../src/sweep/plan.ts';
import type { Trouble } from '../../src/sweep/trouble/trouble.ts';
import { currentOutcome, dial, doubt, hasLiveView, look, turn, turnTheFocus, type BetweenPhases, type Turn } from '../../src/sweep/turn.ts';
import { USUAL_MANNER } from '../../src/sweep/usualManner.ts';
import { seconds, steps } from '../../src/units.ts';
import { drawn, SHORT, type Terms } from './drawn.ts';
import { believingOn } from './end/laid.ts';
import { oneLine } from '../kept/oneLine.ts';
import { later, opened } from './staged.ts';

const VALUES = [0, 5, -5, 3, -3, 4, -2, 1, 5, -4, 2, -1];
const SERIES: Readonly<Record<string, Terms>> = {
  stays: { bandAt: () => [-2.5, 3.5], values: [0, 5, -5, 3, 4, -3, -2, 4, 3, -2, -3], wrong: 0 },
  'is soft': { bandAt: () => [-2.5, 3.5], values: VALUES, wrong: 0.2 },
  moves: { bandAt: (hold) => (hold < 6 ? [-4.5, 0.5] : [0.5, 5.5]), values: VALUES, wrong: 0 },
  'moves far': { bandAt: (hold) => (hold < 6 ? [-5.5, -1.5] : [1.5, 5.5]), values: [-3, -5, 0, -2, -1, -4, 2, -3, 4, 1, 5, 3], wrong: 0 },
  'moves a little': { bandAt: (hold) => (hold < 7 ? [-3.5, 1.5] : [-1.5, 3.5]), values: VALUES, wrong: 0 },
  'was misjudged': { bandAt: (hold) => (hold === 6 || hold === 7 ? [-9, -7] : [-3.5, 3.5]), values: [0, 5, -5, 3, -3, 4, 1, 2, -4, 3, -3, 4], wrong: 0 },
  'was misjudged lately': { bandAt: (hold) => (hold > 7 ? [-9, -7] : [-2.5, 3.5]), values: [3, 4, -2, -3, 3, 4, -2, -3, 1, 2], wrong: 0 },
  drifts: { arrows: 'right-is-up', bandAt: (hold) => [-4 + 0.45 * hold, 1 + 0.45 * hold], values: VALUES, wrong: 0 },
  'never lights': { bandAt: () => [40, 41], values: VALUES, wrong: 0 },
  'is past the limit': { bandAt: () => [1.5, 30], values: [0, 5, 3, 2, 1, 5, 5, 2, 1], wrong: 0 },
}; // prettier-ignore
const CARES = ['quick', 'standard', 'thorough'] as const;
const FOUND: Trouble = { trouble: 'focus moved', bayesFactor: 20, afterHold: 2, seen: true };
const HOLE: Trouble = { trouble: 'hole in the band', bayesFactor: 200, from: steps(0), to: steps(1) };

function stateOf(terms: Terms, count: number, told: Partial<BetweenPhases> = {}, plan: Partial<Plan> = {}): BetweenPhases {
  const { opening, beliefs, holds } = drawn(50, terms);
  const some = holds.slice(0, count);
  const belief = beliefs[count - 1] ?? opening;
  const { plan: usual } = opened({ scale: SHORT, arrows: terms.arrows ?? 'absent', ...plan });
  const journal = some.map(({ ended }) => ({ did: 'ran', at: ended }) as const);
  return { id: 'a', plan: usual, holds: some, spent: [], belief, asOneBand: belief, stories: [], dialled: steps(1), skipped: [], trustedUpTo: 0, troubles: [], journal, ...told };
} // prettier-ignore

const at = (careOf: (typeof CARES)[number]): Partial<Plan> => ({ manner: { ...USUAL_MANNER, care: careOf } });
const short = ({ state, effects }: Turn): string => {
  const { phase, stories, troubles } = state;
  const { name, ...rest } = phase;
  const said = effects.map((effect) => (effect.do === 'say' ? Object.keys(effect.prompt) : Object.values(effect)));
  return oneLine([name, rest, stories.map(({ story, bayesFactor }) => [Object.values(story), bayesFactor]), troubles.map(Object.values), said]);
};

test.each(Object.keys(SERIES))('a series that %s', (name) => {
  const terms = SERIES[name] ?? {};
  const all = terms.values?.length ?? 0;
  const rows = CARES.flatMap((care, nth) =>
    [all - nth, all - 4 + nth].map((count) => {
      const state = stateOf(terms, count, {}, at(care));
      return short(turn(state, later(500), state.holds.at(-1) ?? null));
    }),
  );
  const state = stateOf(terms, all);
  const trusting = short(turn({ ...state, trustedUpTo: all - 3, skipped: [steps(0), steps(1), steps(2)] }, later(500), null));
  const doubting = short(turn({ ...state, troubles: [FOUND, HOLE] }, later(500), null));
  const withStories = { ...state, stories: storiesOf(state.asOneBand, state.holds) };
  const now = oneLine([currentOutcome(withStories, later(1200)), Object.values(look(withStories)).slice(1)]);
  expect([rows, trusting, doubting, now]).toMatchSnapshot();
});

test('what would come out where a trouble stands', () => {
  const outcome = (name: string, trouble: Trouble['trouble']) =>
    currentOutcome(stateOf(SERIES[name] ?? {}, 9, { troubles: [{ trouble } as Trouble] }), later(500)).found;
  expect([outcome('stays', 'flickers everywhere'), outcome('stays', 'never lights'), outcome('stays', 'lights everywhere')]).toEqual([
    'nothing',
    'nothing',
    'band',
  ]);
  const state = stateOf(SERIES['is past the limit'] ?? {}, 9);
  const past = { ...state, belief: believingOn(state.belief.model, [1.5, 6.5, 1]) };
  expect(currentOutcome(past, later(500))).toMatchObject({ found: 'past the limit', side: 'high', visible: 2, bound: 3.5 });
  const everywhere = currentOutcome({ ...past, troubles: [{ trouble: 'lights everywhere' } as Trouble] }, later(500));
  expect(everywhere).toMatchObject({ found: 'past the limit', side: 'both', visible: null, bound: null });
  const beyond = { ...state, belief: believingOn(state.belief.model, [5.5, 6.5, 1]), troubles: [{ trouble: 'never lights' } as Trouble] };
  expect(currentOutcome(beyond, later(500)).found).toBe('beyond the scale');
  expect(currentOutcome(stateOf(SERIES['stays'] ?? {}, 4, { spent: stateOf(SERIES['stays'] ?? {}, 3).holds }), later(500)).tally.holds).toBe(7);
  expect([doubt({ troubles: [] }), doubt({ troubles: [FOUND] }), doubt({ troubles: [FOUND, HOLE] })]).toEqual([{}, {}, { trouble: HOLE }]);
});

test('a hold that a believed story says was misjudged does not count', () => {
  const state = stateOf(SERIES['stays'] ?? {}, 6);
  const bands = state.asOneBand.posterior;
  const believing = (from: number, to: number, bayesFactor: number): readonly Weighed[] => [{ story: { is: 'misjudged', from, to }, bayesFactor, bands }];
  const ends = (stories: readonly Weighed[]) => oneLine(look({ ...state, stories }).readiness);
  const seen = [[], believing(3, 4, 20), believing(3, 4, 19.9), believing(4, 4, 30), believing(3, 3, 30), believing(5, 5, 30), believing(0, 2, 30)].map(ends);
  expect(seen).toMatchSnapshot();
});

test('a counted pace counts in from three seconds before the hold, as far as there is time', () => {
  const { plan } = opened();
  const next = { value: steps(2), reason: { because: 'yours' } } as const;
  const effects = (toDial: number | null) => {
    const pace = toDial === null ? ({ set: 'own' } as const) : ({ set: 'counted', toDial: seconds(toDial) } as const);
    const state = stateOf({}, 1, {}, { ...plan, scale: SHORT, arrows: 'absent', manner: { ...USUAL_MANNER, pace } });
    return dial(state, next, { do: 'clear alarms' }).effects.slice(1).map((effect) => (effect.do === 'sound' || effect.do === 'wake' ? effect.after : effect.do)); // prettier-ignore
  };
  expect([effects(null), effects(2), effects(2.5), effects(3), effects(3.5), effects(10)]).toEqual([
    [],
    [1, 2],
    [0.5, 1.5, 2.5],
    [1, 2, 3],
    [0.5, 1.5, 2.5, 3.5],
    [7, 8, 9, 10],
  ]);
});

test('live view is there with real kit outside a width transfer', () => {
  const { plan } = opened();
  const transfer: Plan['transfer'] = { of: 'a', side: 'high', visible: null, holds: [] };
  expect([plan, { ...plan, practice: { seed: 1 } }, { ...plan, transfer }].map(hasLiveView)).toEqual([true, false, false]);
  expect([plan, { ...plan, practice: { seed: 1 } }].map((one) => turnTheFocus(one, 'back', null))).toMatchObject([{ practice: false }, { practice: true }]);
});

// Whole sweeps, event by event, as they went: in each the seed decides what the light does and what the person does beside the holds,
// and every phase, every prompt and every outcome is kept.
import { expect, test } from 'vitest';
import type { Effect, Prompt } from '../../src/sweep/effect.ts';
import type { SweepEvent } from '../../src/sweep/event.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import type { Plan } from '../../src/sweep/plan.ts';
import { stagesOf } from '../../src/sweep/replayed.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import { transition } from '../../src/sweep/transition.ts';
import { USUAL_MANNER } from '../../src/sweep/usualManner.ts';
import type { Arrows, Light, Verdict } from '../../src/sweep/verdict.ts';
import { seededRandom, type Random } from '../../src/practice/random.ts';
import { seconds, steps } from '../../src/units.ts';
import { oneLine } from '../kept/oneLine.ts';
import { later, opened } from './staged.ts';

const SMALL = { min: steps(-4), max: steps(4), step: 1 };
type Shows = (value: number, nth: number, random: Random) => Verdict;

const outside = (value: number, low: number, high: number): Light =>
  value >= low && value <= high ? 'steady' : Math.max(low - value, value - high) <= 1 ? 'late' : 'flicker';
const band =
  (low: number, high: number, wrong = 0): Shows =>
  (value, _, random) => ({ light: random() < wrong ? 'dark' : outside(value, low, high), arrows: 'none' });
const moving =
  (after: number, by: number): Shows =>
  (value, nth) => ({ light: nth < after ? outside(value, -3, 0) : outside(value, -3 + by, by), arrows: 'none' });
const only =
  (light: Light): Shows =>
  () => ({ light, arrows: 'none' });
const pointing =
  (low: number, high: number, turn: number): Shows =>
  (value, nth) => {
    const light = outside(value, low, high);
    const arrows: Arrows = light === 'steady' ? 'balanced' : value < low === nth < turn ? 'right' : 'left';
    return { light, arrows };
  };
const misjudging: Shows = (value, nth) => ({ light: nth === 5 || nth === 6 ? 'flicker' : outside(value, -2, 2), arrows: 'none' });

interface Sweep {
  readonly plan: Partial<Plan>;
  readonly shows: Shows;
  /** How often the person does something else than hold. */
  readonly beside: number;
}

const manner = (told: Partial<Plan['manner']>): Partial<Plan> => ({ scale: SMALL, arrows: 'absent', manner: { ...USUAL_MANNER, ...told } });
const TRANSFER: Plan['transfer'] = {
  of: 'a',
  side: 'high',
  visible: steps(2),
  holds: [0, 2, 1, 4].map((value) => ({ value: steps(value), verdict: { light: value < 2 ? 'late' : 'steady', arrows: 'none' } })),
};
const ENDS: Plan['memory'] = { centres: [{ centre: 0, sd: 1, weight: 0.9 }], halfWidth: null, ends: { low: steps(-1), high: steps(2), proven: steps(1) } };
const SWEEPS: Readonly<Record<string, Sweep>> = {
  'of a band that stays': { plan: manner({}), shows: band(-2, 1), beside: 0 },
  'with much beside the holds': { plan: manner({ care: 'thorough' }), shows: band(-1, 2, 0.1), beside: 0.35 },
  'at a counted pace, outwards': { plan: manner({ pace: { set: 'counted', toDial: seconds(3) }, order: 'outward', care: 'quick' }), shows: band(0, 2), beside: 0.1 },
  'in practice, with arrows': { plan: { ...manner({}), arrows: 'right-is-up', practice: { seed: 3 } }, shows: pointing(-1, 2, 99), beside: 0.2 },
  'with arrows that turn': { plan: { ...manner({}), arrows: 'right-is-up' }, shows: pointing(-1, 1, 4), beside: 0 },
  'of a focus that moves': { plan: manner({}), shows: moving(5, 4), beside: 0 },
  'of a focus that moves a little': { plan: manner({ care: 'thorough' }), shows: moving(6, 2), beside: 0.1 },
  'of eyes that tired': { plan: manner({}), shows: misjudging, beside: 0 },
  'that flickers everywhere': { plan: manner({ care: 'quick' }), shows: only('flicker'), beside: 0 },
  'that holds everywhere': { plan: manner({}), shows: only('steady'), beside: 0 },
  'swept before': { plan: { ...manner({}), memory: ENDS }, shows: band(-1, 2), beside: 0 },
  'past the limit': { plan: manner({}), shows: band(2, 9), beside: 0 },
  'of a width transfer': { plan: { ...manner({}), transfer: TRANSFER }, shows: (value, nth, random) => (nth < 6 ? band(1, 8) : band(-2, 1))(value, nth, random), beside: 0 },
}; // prettier-ignore

const STEPS = 34;

/** What is done next: mostly the next of a hold, now and then something else, also where it makes no sense. */
function nextEvent({ phase }: SweepState, { shows, beside }: Sweep, at: number, nth: number, random: Random): SweepEvent {
  const now = later(at);
  const by = 'key' as const;
  if (random() < beside) {
    const others: readonly SweepEvent[] = [
      { did: 'undid', at: now, by }, { did: 'skipped', at: now, by }, { did: 'paused', at: now, by }, { did: 'resumed', at: now, by }, { did: 'cut off', at: now },
      { did: 'unanswered', at: now }, { did: 'unanswered', at: now }, { did: 'went on', at: now, by }, { did: 'chose', at: now, value: steps(Math.floor(11 * random()) - 5), by },
      { did: 'amended', at: now, arrows: 'left', by, heard: null }, { did: 'checked', at: now, focus: 'unmoved', by }, { did: 'ran', at: now }, { did: 'heard', at: now, guesses: [], became: 'other' },
      { did: 'judged', at: now, verdict: { light: 'late', arrows: 'none' }, by, heard: null },
    ]; // prettier-ignore
    return others[Math.floor(random() * others.length)] ?? { did: 'ran', at: now };
  }
  switch (phase.name) {
    case 'dialling':
      return { did: 'began', at: now, value: phase.next.value, by };
    case 'holding':
      return nth % 2 === 0 ? { did: 'ran', at: now } : { did: 'judged', at: now, verdict: shows(phase.next.value, nth, random), by, heard: null };
    case 'judging':
      return { did: 'judged', at: now, verdict: shows(phase.next.value, nth, random), by, heard: null };
    case 'offered':
      return at % 3 === 0 ? { did: 'went on', at: now, by } : { did: 'finished', at: now, by };
    case 'paused':
      return { did: 'resumed', at: now, by };
    case 'checking':
      return { did: 'checked', at: now, focus: nth % 3 === 0 ? 'unmoved' : 'moved', by };
    case 'turning':
      return { did: 'checked', at: now, focus: 'moved', by };
    case 'finished':
      return nth % 4 === 0 ? { did: 'undid', at: now, by } : { did: 'finished', at: now, by };
  }
}

const short = (prompt: Prompt): unknown => {
  const { say, ...rest } = prompt;
  return [say, ...Object.entries(rest).map(([name, value]) => (name === 'noted' ? ((value as { value: number } | null)?.value ?? '-') : value))];
};
const told = (effects: readonly Effect[]): unknown[] =>
  effects.filter((effect) => effect.do !== 'clear alarms').map((effect) => (effect.do === 'say' ? short(effect.prompt) : effect.do === 'keep' ? 'keep' : effect.do === 'record' ? 'record' : Object.values(effect))); // prettier-ignore

test.each(Object.keys(SWEEPS))('a sweep %s', (name) => {
  const sweep = SWEEPS[name] ?? { plan: {}, shows: band(0, 1), beside: 0 };
  const random = seededRandom(name.length);
  const first = opened(sweep.plan);
  const rows: string[] = [];
  let { state, effects } = openSweep(first);
  rows.push(oneLine([state.phase.name, told(effects)]));
  let at = 10;
  for (let done = 0; done < STEPS && state.phase.name !== 'finished'; done++) {
    at += [1, 6, 4, 130][Math.floor(random() * 3.05)] ?? 1;
    const nth = state.holds.length + state.spent.length;
    const event = nextEvent(state, sweep, at, nth, random);
    ({ state, effects } = transition(state, event));
    rows.push(oneLine([event.did, state.phase.name, state.holds.length, state.spent.length, state.skipped.length, told(effects)]));
  }
  // Played once more, so not of every sweep.
  const stages = sweep.beside > 0.15 ? stagesOf([first, ...state.journal.slice(1)]).map(({ is }) => is) : [];
  expect([
    rows,
    stages.join(', '),
    state.troubles.map(oneLine),
    state.stories.map(({ story, bayesFactor }) => oneLine([story, bayesFactor])),
  ]).toMatchSnapshot();
});

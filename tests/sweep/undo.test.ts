import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { SweepEvent } from '../../src/sweep/event.ts';
import { replay, transition } from '../../src/sweep/transition.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import { USUAL_MANNER } from '../../src/sweep/usualManner.ts';
import { seconds, steps } from '../../src/units.ts';
import { after, begin, inPhase, later, opened } from './staged.ts';

const undid: SweepEvent = { did: 'undid', at: later(999), by: 'key' };
const flicker: SweepEvent = { did: 'judged', at: later(11), verdict: { light: 'flicker', arrows: 'none' }, by: 'voice', heard: 'flicker' };
const plain = ({ phase, holds, dialled, skipped }: SweepState) => ({ phase, holds, dialled, skipped });

test('undo takes the last verdict back and asks for the same value again', () => {
  const before = inPhase('dialling');
  const state = after(begin(before, 10), flicker, undid);
  expect(plain(state)).toEqual(plain(before));
});

test('undo during a hold drops the hold', () => {
  expect(plain(after(inPhase('holding'), undid))).toEqual(plain(inPhase('dialling')));
});

test('undo after the finish goes back to the sweep', () => {
  const finished = after(inPhase('offered'), { did: 'finished', at: later(900), by: 'key' });
  expect(after(finished, undid).phase.name).toBe('offered');
});

test('undo of a finish that was offered offers it again', () => {
  const finished = after(inPhase('offered'), { did: 'finished', at: later(900), by: 'voice' });
  const { effects } = transition(finished, undid);
  expect(effects.at(-1)).toMatchObject({ do: 'say', prompt: { say: 'offer' } });
});

test.each([
  { did: 'paused', at: later(12), by: 'key' },
  { did: 'finished', at: later(12), by: 'voice' },
] as const)('undo of what cut a hold short ($did) asks for that hold from its beginning, as its clock no longer runs', (cutting) => {
  const { state, effects } = transition(after(inPhase('holding'), cutting), undid);
  expect(plain(state)).toEqual(plain(inPhase('dialling')));
  expect(effects.at(-1)).toMatchObject({ do: 'say', prompt: { say: 'undone' } });
});

test('with a counted pace the count begins anew after undo', () => {
  const manner = { ...USUAL_MANNER, pace: { set: 'counted', toDial: seconds(8) } } as const;
  const { effects } = transition(inPhase('holding', { manner }), undid);
  expect(effects.at(-1)).toEqual({ do: 'wake', alarm: 'dial', after: 8 });
});

test('with nothing to take back undo says so and changes nothing', () => {
  const before = inPhase('dialling');
  const { state, effects } = transition(before, undid);
  expect(state).toBe(before);
  expect(effects.at(-1)).toEqual({ do: 'say', prompt: { say: 'nothing to undo' } });
});

test('an arrow told right after the light completes that verdict', () => {
  const state = after(begin(inPhase('dialling'), 10), flicker, { did: 'amended', at: later(12), arrows: 'right', by: 'key', heard: null });
  expect(state.holds).toHaveLength(1);
  expect(state.holds[0]).toMatchObject({ verdict: { light: 'flicker', arrows: 'right' }, reading: { side: 'above' } });
});

test('on a body without arrows an arrow cannot be told', () => {
  const judged = after(begin(inPhase('dialling', { arrows: 'absent' }), 10), flicker);
  const { state, effects } = transition(judged, { did: 'amended', at: later(12), arrows: 'right', by: 'key', heard: null });
  expect(state).toBe(judged);
  expect(effects.at(-1)).toEqual({ do: 'say', prompt: { say: 'not now', why: 'no arrows' } });
});

test('whatever is done, replaying what was kept gives the state that was left', () => {
  const wish = fc.constantFrom('begin', 'run', 'steady', 'late', 'dark', 'undo', 'pause', 'resume', 'skip', 'finish', 'go on', 'set', 'cut off');
  fc.assert(
    fc.property(fc.array(wish, { maxLength: 14 }), (wishes) => {
      const opening = opened();
      const kept: SweepEvent[] = [opening];
      let state = inPhase('dialling');
      wishes.forEach((name, index) => {
        const step = transition(state, eventFor(name, index, state));
        for (const effect of step.effects) if (effect.do === 'keep') kept.push(effect.event);
        state = step.state;
      });
      expect(plain(replay(kept))).toEqual(plain(state));
    }),
    { numRuns: 25 },
  );
});

function eventFor(name: string, index: number, { phase }: SweepState): SweepEvent {
  const at = later(10 + 6 * index);
  const judged = (light: 'steady' | 'late' | 'dark'): SweepEvent => ({ did: 'judged', at, verdict: { light, arrows: 'none' }, by: 'key', heard: null });
  switch (name) {
    case 'begin':
      return { did: 'began', at, value: 'next' in phase ? phase.next.value : steps(0), by: 'key' };
    case 'run':
      return { did: 'ran', at };
    case 'steady':
    case 'late':
    case 'dark':
      return judged(name);
    case 'undo':
      return { did: 'undid', at, by: 'key' };
    case 'pause':
      return { did: 'paused', at, by: 'key' };
    case 'resume':
      return { did: 'resumed', at, by: 'key' };
    case 'skip':
      return { did: 'skipped', at, by: 'key' };
    case 'finish':
      return { did: 'finished', at, by: 'key' };
    case 'go on':
      return { did: 'went on', at, by: 'key' };
    case 'set':
      return { did: 'chose', at, value: steps(index - 5), by: 'key' };
    default:
      return { did: 'cut off', at };
  }
}

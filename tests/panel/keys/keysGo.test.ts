// Contract of where the keys go: told at once when they leave, once a loss, again when a hold would be lost, and when they are back.
import { signal } from '@preact/signals';
import { expect, test, vi } from 'vitest';
import { watchKeys } from '../../../src/panel/keys/keysGo.ts';
import type { EarState, Role } from '../../../src/panel/session/session.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import { begin, after, inPhase, later } from '../../sweep/staged.ts';

const ELSEWHERE = 'Keys go to the page: click the panel.';
const BACK = 'Keys reach the panel again.';
const AT_STAKE = 'The time is up, but keys go to the page: click the panel.';

function watching({
  sweep: first = inPhase('dialling') as SweepState | null,
  role: owner = 'owner' as Role,
  ear: hears = 'off' as EarState,
  beside = false,
  here: first_ = true,
} = {}) {
  const sweep = signal(first);
  const role = signal(owner);
  const ear = signal(hears);
  const said: string[] = [];
  let here = first_;
  let changed = (): void => undefined;
  const keyboard = { isHere: () => here, onChange: (listener: () => void) => ((changed = listener), () => undefined) };
  const { go, end } = watchKeys(
    keyboard,
    { sweep, role, ear, clock: () => later(99), sayShown: (sentence, when) => void said.push(`${when}: ${sentence}`) },
    beside,
  );
  const keysTo = (whom: 'page' | 'panel'): void => {
    here = whom === 'panel';
    changed();
  };
  return { sweep, role, said, go, end, keysTo };
}

test('while a sweep runs here, a loss is shown and said at once, and only once', () => {
  const { said, go, keysTo } = watching();
  expect([go.value, said]).toEqual(['here', []]);
  keysTo('page');
  keysTo('page');
  expect([go.value, said]).toEqual(['elsewhere', [`now: ${ELSEWHERE}`]]);
});

test('a panel that takes a sweep up without the keys says so', () => {
  expect(watching({ here: false }).said).toEqual([`now: ${ELSEWHERE}`]);
});

test('on return it says that it hears and asks again for what it waits for, and shows it for three seconds', () => {
  vi.useFakeTimers();
  const { said, go, keysTo } = watching();
  keysTo('page');
  keysTo('panel');
  expect(go.value).toBe('back');
  expect(said).toEqual([`now: ${ELSEWHERE}`, `now: ${BACK}`, 'next: Zero.']);
  vi.advanceTimersByTime(3000);
  expect(go.value).toBe('here');
  vi.useRealTimers();
});

test('when a hold ends meanwhile, it is said again after the end tone; not to a person who is heard', async () => {
  const lost = async (ear: EarState): Promise<string[]> => {
    const { sweep, said, keysTo } = watching({ sweep: begin(inPhase('dialling'), 10), ear });
    keysTo('page');
    sweep.value = after(sweep.value as SweepState, { did: 'ran', at: later(15) });
    await Promise.resolve();
    return said;
  };
  expect(await lost('off')).toEqual([`now: ${ELSEWHERE}`, `next: ${AT_STAKE}`]);
  expect(await lost('listening')).toEqual([`now: ${ELSEWHERE}`]);
});

test.each([
  ['no sweep', { sweep: null }],
  ['a sweep that is over', { sweep: inPhase('finished') }],
  ['a sweep that runs in another window', { role: 'follower' as const }],
])('with %s nothing is said', (_, world) => {
  const { said, go, keysTo } = watching(world);
  keysTo('page');
  expect([go.value, said]).toEqual(['here', []]);
});

test('in the set-up walk it is said without a sweep, and without asking for a value on return', () => {
  const { said, keysTo } = watching({ sweep: null, beside: true });
  keysTo('page');
  keysTo('panel');
  expect(said).toEqual([`now: ${ELSEWHERE}`, `now: ${BACK}`]);
});

test('once the screen is left, a loss is nobody’s business', () => {
  const { said, keysTo, end } = watching();
  end();
  keysTo('page');
  expect(said).toEqual([]);
});

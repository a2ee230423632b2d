// @vitest-environment happy-dom
// Contract of the trainer: reached from the start, judged by keys, by pointer or by one switch, scored in words, and kept.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { TrainingRound } from '../../src/practice/training/round.ts';
import type { Input } from '../../src/sweep/inputs.ts';
import { moment } from '../../src/units.ts';
import { FakeSession } from './fakeSession.ts';
import { button, click, key, partsRead, show, text } from './show.tsx';

const FAKED = { toFake: ['setTimeout', 'clearTimeout'] } as const;
beforeEach(() => void vi.useFakeTimers({ toFake: [...FAKED.toFake] }));
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

const at = (): string | null => screen.queryByLabelText('Training hold')?.getAttribute('data-training') ?? null;

/** Lets time go by for the panel's timers and for its clock alike. */
const pass = (session: FakeSession, time: number): Promise<void> =>
  act(() => {
    session.now.value = moment(session.now.value + time * 1000);
    vi.advanceTimersByTime(time * 1000);
  });

async function opened(session = new FakeSession()): Promise<FakeSession> {
  await show(session);
  await act(() => void click('Practice camera'));
  await partsRead();
  click('Train your eye');
  await partsRead();
  return session;
}

/** One hold judged when its time is up. */
async function hold(session: FakeSession, told: () => void): Promise<void> {
  await act(() => void key(' '));
  expect(at()).toBe('holding');
  await pass(session, 2.1);
  expect(at()).toBe('judging');
  await act(told);
}

const tenSteady: TrainingRound = {
  at: moment(0),
  level: 2,
  holds: Array.from({ length: 10 }, () => ({ shown: 'steady', told: 'steady', level: 2 })),
};

test('a round is told by words alone, and the words are let go with it', async () => {
  const session = await opened();
  await act(() => void click('Begin a round'));
  const say = (input: Input) => act(() => session.listener?.take(input));
  for (let count = 0; count < 10; count++) {
    await say({ told: 'hold', by: 'voice', heard: 'holding' });
    expect(at()).toBe('holding');
    await pass(session, 2.1);
    await say({ told: 'verdict', verdict: { light: 'flicker', arrows: 'none' }, by: 'voice', heard: 'flicker' });
  }
  expect(text()).toMatch(/\d+ of 10 right/);
  expect(session.settings.value.training.rounds[0]?.holds.every(({ told }) => told === 'flicker')).toBe(true);
  expect(session.listener).toBe(null);
});

test('ten holds told by key end in a score in words, and the round is kept', async () => {
  const session = await opened();
  await act(() => void click('Begin a round'));
  for (let count = 0; count < 10; count++) await hold(session, () => key('n'));
  expect(text()).toMatch(/\d+ of 10 right/);
  expect(text()).toContain('You are on level 1 of 8.');
  const [round, ...others] = session.settings.value.training.rounds;
  expect(others).toEqual([]);
  expect(round?.holds.every(({ told }) => told === 'dark')).toBe(true);
  expect(session.announcement.value).toMatch(/^(Right|No)/);
});

test('“steady” is refused until the time is up', async () => {
  await opened();
  await act(() => void click('Begin a round'));
  await act(() => void key(' '));
  await act(() => void key('s'));
  expect(at()).toBe('holding');
  expect(text()).toContain('Not yet. Hold until the time is up.');
});

test('one switch begins a round, holds, and says that it held or how it failed', async () => {
  const session = await opened();
  await act(() => void key('PageDown'));
  expect(at()).toBe('dialling');
  await act(() => void key('PageDown'));
  await pass(session, 2.1);
  await act(() => void key('PageDown'));
  expect(text()).toContain('Hold 2 of 10');
  await act(() => void key('PageDown'));
  await pass(session, 0.7);
  await act(() => void key('PageDown'));
  await pass(session, 0.5);
  expect(text()).toContain('Hold 3 of 10');
});

test('a pointer on the switch and on the words is enough', async () => {
  const session = await opened();
  await act(() => void click('Begin a round'));
  await act(() => void fireEvent.click(button(/begin the hold/i), { detail: 0 }));
  await pass(session, 2.1);
  await act(() => void click(/^solid/));
  expect(text()).toContain('Hold 2 of 10');
});

test('leaving in the middle of a round keeps nothing of it', async () => {
  const session = await opened();
  await act(() => void click('Begin a round'));
  await hold(session, () => key('n'));
  await act(() => void click('Back'));
  expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Train your eye');
  expect(session.settings.value.training.rounds).toEqual([]);
});

test('own reliability is offered after enough plain holds, is off until the person says yes, and goes with the rounds', async () => {
  const session = new FakeSession();
  session.changeSettings({ training: { rounds: [tenSteady, tenSteady, tenSteady], own: false } });
  await opened(session);
  expect(screen.queryByLabelText(/Use my own reliability/)).toBeNull();
  expect(text()).toContain(
    '30 of 30 plain holds counted right. So 88% to 100% of your holds count right, 95% sure. For a sweep, the lower figure must reach 90%.',
  );

  await act(() => void session.changeSettings({ training: { rounds: [tenSteady, tenSteady, tenSteady, tenSteady], own: false } }));
  expect(text()).toContain('40 of 40 plain holds counted right. So 91% to 100% of your holds count right, 95% sure. That is reliable enough for a sweep.');
  const own = screen.getByLabelText<HTMLInputElement>(/Use my own reliability/);
  expect(own.checked).toBe(false);
  await act(() => void fireEvent.click(own));
  expect(session.settings.value.training.own).toBe(true);

  await act(() => void click('Forget my rounds'));
  await act(() => void click('Forget them'));
  expect(session.settings.value.training).toEqual({ rounds: [], own: false });
});

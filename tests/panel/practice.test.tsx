// @vitest-environment happy-dom
// Contract of the practice camera on screen: its light plays during the hold, and only then, and never judges itself.
import { cleanup, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test, vi } from 'vitest';
import { practiceVerdict } from '../../src/practice/lamp.ts';
import type { Plan } from '../../src/sweep/plan.ts';
import { steps } from '../../src/units.ts';
import { FakeSession, PLAN } from './fakeSession.ts';
import { click, key, partsRead, phase, show } from './show.tsx';

afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

const light = (): string | null | undefined => screen.queryByRole('img', { name: /^Practice light/ })?.getAttribute('aria-label');

/** A practice plan whose first half-press at zero shows this light. */
function showing(wanted: string): Plan {
  const seed = Array.from({ length: 500 }, (_, index) => index).find((seed) => practiceVerdict({ ...PLAN, practice: { seed } }, steps(0), 1)?.light === wanted);
  return { ...PLAN, practice: { seed: seed ?? -1 } };
}

async function held(wanted: string): Promise<FakeSession> {
  const session = new FakeSession({ plan: showing(wanted) }).open();
  session.input({ told: 'set', value: steps(0), by: 'key', heard: null });
  await show(session);
  expect(light()).toBeUndefined();
  await act(() => key(' '));
  return session;
}

test('a steady light is on at once', async () => {
  await held('steady');
  expect(light()).toBe('Practice light: lit');
});

test('a dark light stays dark', async () => {
  await held('dark');
  expect(light()).toBe('Practice light: dark');
});

test('a late light comes on after a while', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  await held('late');
  expect(light()).toBe('Practice light: dark');
  await act(() => void vi.advanceTimersByTime(3000));
  expect(light()).toBe('Practice light: lit');
});

test('the person judges it: a wrong word counts as it was told', async () => {
  const session = await held('steady');
  await act(() => key('n'));
  expect(session.sweep.value?.holds.at(-1)?.verdict.light).toBe('dark');
  expect(phase()).toBe('dialling');
  expect(light()).toBeUndefined();
});

test('a trouble does not hide the light while a hold is judged', async () => {
  const session = await held('steady');
  session.troubles.value = [{ id: 'speech', sentence: 'No voice answers.', remedy: null }];
  await act(() => undefined);
  expect(light()).toBe('Practice light: lit');
  expect(screen.getByRole('alert').textContent).toContain('No voice answers.');
});

test('something may be wrong with it, for the person to find out: one tick', async () => {
  const session = await show(new FakeSession());
  await act(() => void click('Practice camera'));
  await partsRead();
  await act(() => void screen.getByLabelText('Something is wrong with it: find out what').click());
  await act(() => void click('Practise'));
  expect(session.asked).toContain('begin with practice, absent, odd');
});

// @vitest-environment happy-dom
// Contract of the far view: key, word and a press on the value switch it alike, it is kept, and it takes nothing from the sweep.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { inputOf } from '../../src/sweep/meaning.ts';
import { FakeSession } from './fakeSession.ts';
import { button, click, key, phase, show, text, valueToSet } from './show.tsx';

afterEach(cleanup);

const isFar = (): boolean => document.querySelector('[data-far="true"]') !== null;

function sweep(): FakeSession {
  const session = new FakeSession().open();
  session.changeSettings({ coached: 2 });
  return session;
}

test.each<[string, (session: FakeSession) => void]>([
  ['the key', () => key('w')],
  ['the word', (session) => session.input(inputOf('far view', 'voice', 'far view'))],
  ['a press on the value', () => fireEvent.click(screen.getByLabelText('Value to set'))],
])('%s switches it on, and the same again switches it off', async (_, turn) => {
  const session = await show(sweep());
  await act(() => void turn(session));
  expect(isFar()).toBe(true);
  await act(() => void turn(session));
  expect(isFar()).toBe(false);
});

test('it shows the value, what to do, the time and how far the sweep has come, and nothing to be looked at between holds', async () => {
  const session = await show(sweep());
  await act(() => key('w'));
  expect(valueToSet()).toMatch(/\d/);
  expect(text()).toMatch(/then half-press.*about 0 of \d+ holds/);
  expect(button(/begin the hold/)).toBeDefined();
  expect(document.querySelector('.strip')).toBeNull();
  await act(() => key(' '));
  await act(() => void session.pass(2));
  expect(text()).toContain('seconds left');
  for (const word of ['solid', 'delayed', 'flicker', 'nothing']) expect(button(new RegExp(`^${word}`))).toBeDefined();
});

test('during a hold it leaves the hold and its clock alone, and the switch stays under the finger', async () => {
  const session = await show(sweep());
  await act(() => key(' '));
  const { journal } = session.sweep.value ?? {};
  const standing = button(/flickered/);
  await act(() => key('w'));
  expect(phase()).toBe('holding');
  expect(session.sweep.value?.journal).toBe(journal);
  expect(button(/flickered/)).toBe(standing);
});

test('it is kept: a panel opened anew shows the sweep from afar at once', async () => {
  const session = sweep();
  session.changeSettings({ look: { far: true } });
  await show(session);
  expect(isFar()).toBe(true);
  await act(() => void click('Leave the far view'));
  expect(session.settings.value.look).toEqual({ theme: 'system', far: false });
});

test('a value to enter is shown from afar, too; a result without one is read near', async () => {
  const session = sweep();
  session.changeSettings({ look: { far: true } });
  await show(session);
  await act(() => void session.hold('dark', 0).input({ told: 'finish', by: 'key', heard: null }));
  await act(() => session.ready);
  expect(phase()).toBe('finished');
  expect(isFar()).toBe(false);
});

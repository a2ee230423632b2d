// @vitest-environment happy-dom
// Contract of a screen without content: one sentence and one drawing, which is said to those who hear the screen, and one button that
// begins it; none of it once there is content.
import { cleanup, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { EMPTY_KIT } from '../../src/kit/kit.ts';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show, text } from './show.tsx';

afterEach(cleanup);

const press = async (name: string | RegExp): Promise<void> => {
  await act(() => void click(name));
  await partsRead();
};

const drawing = (): HTMLElement | null => screen.queryByRole('img', { name: /^Drawing: .*\.$/ });
const sentence = (): string => document.querySelector('.empty p')?.textContent ?? '';
const chief = (): string[] => [...document.querySelectorAll('button.chief')].map(({ textContent }) => textContent ?? '');
const place = (): string | undefined => document.querySelector('main')?.dataset['screen'];

test.each([
  { at: 'Logbook', begins: 'Begin with a lens', leadsTo: 'start' },
  { at: 'Plan', begins: 'To the kit', leadsTo: 'kit' },
  { at: 'Kit', begins: 'Add a body', leadsTo: 'body' },
])('$at: one sentence, one drawing that is said, and one button that begins it', async ({ at, begins, leadsTo }) => {
  await show(new FakeSession({ kit: EMPTY_KIT }));
  await press(at);
  expect(drawing()).toBeTruthy();
  expect(sentence()).toMatch(/^[^.]+\.$/);
  expect(chief()).toEqual([begins]);
  await press(begins);
  expect(place()).toBe(leadsTo);
});

test('a plan that can be made says what to choose, and its form has the button', async () => {
  await show(new FakeSession());
  await press('Plan');
  expect(drawing()).toBeTruthy();
  expect(sentence()).toMatch(/^Choose what to measure[^.]+\.$/);
  expect(chief()).toEqual(['Make the plan']);
});

test('files of an empty logbook show what they are for; of one with content they do not', async () => {
  await show(new FakeSession({ kit: EMPTY_KIT }));
  await press('Logbook');
  await press('Backup and tables');
  expect(drawing()).toBeTruthy();
  cleanup();
  await show(new FakeSession());
  await press('Logbook');
  expect(drawing()).toBeNull();
  await press('Backup and tables');
  expect(text()).toContain('No backup was written');
  expect(drawing()).toBeNull();
});

test('photographs show what to bring in until there is one', async () => {
  await show(new FakeSession());
  await press('Check with photographs');
  expect(screen.getByRole('img', { name: /^Drawing: a picture of the target and the ramp/ })).toBeTruthy();
  expect(sentence()).toMatch(/^Photograph the printed target[^.]+\.$/);
});

test('a kit with something in it is its lists, and no drawing', async () => {
  await show(new FakeSession());
  await press('Kit');
  expect(drawing()).toBeNull();
  expect(screen.getByRole('region', { name: 'Bodies' })).toBeTruthy();
});

// Contract of the session over crashes and windows: nothing noted is lost, and one window runs the sweep.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { seconds } from '../../../src/units.ts';
import { phaseOf, sweeping } from './sweeping.ts';
import type { Window } from './world.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Time enough for a window to take the sweep up. */
const takenUp = () => vi.advanceTimersByTimeAsync(1000);
const roles = (...windows: Window[]) => windows.map(({ session }) => session.role.value);

test('a panel that was closed during a hold comes back to the same value, and the hold does not count', async () => {
  const { computer, window } = await sweeping();
  await window.tell('holding');
  await window.tell('flicker');
  const value = window.session.sweep.value?.phase;
  await window.tell('holding');
  await window.crash();
  computer.log.length = 0;

  const again = await computer.open();
  expect(roles(again)).toEqual(['owner']);
  expect(again.session.sweep.value?.holds).toHaveLength(1);
  expect(again.session.sweep.value?.phase).toEqual(value);
  expect(computer.log).toEqual(['write live cut off', expect.stringMatching(/^say Again\. /)]);
});

test('a panel that was closed between two holds says the value again', async () => {
  const { computer, window } = await sweeping();
  await window.tell('holding');
  await window.tell('flicker');
  await window.crash();
  computer.log.length = 0;
  const again = await computer.open();
  expect(phaseOf(again)).toBe('dialling');
  expect(computer.log).toEqual([expect.stringMatching(/^say (Plus|Minus|Zero)/)]);
});

test('a panel that comes back with a counted pace waits for the person', async () => {
  const { computer, window } = await sweeping({ manner: { pace: { set: 'counted', toDial: seconds(6) } } });
  await window.crash();
  const again = await computer.open();
  expect(phaseOf(again)).toBe('paused');
  expect(again.alarmsSet()).toEqual([]);
});

test('a second window follows: it sees every hold, gives no events, and says so', async () => {
  const { computer, window } = await sweeping();
  const other = await computer.open();
  expect(roles(window, other)).toEqual(['owner', 'follower']);
  await window.tell('holding');
  expect(phaseOf(other)).toBe('holding');
  await window.tell('flicker');
  expect(other.session.sweep.value?.phase).toEqual(window.session.sweep.value?.phase);

  const journal = computer.journal();
  await other.tell('holding');
  expect(computer.journal()).toEqual(journal);
  expect(phaseOf(other)).toBe('dialling');
  expect(other.session.heard.value?.became).toMatch(/Another window/);
});

test('a window that was open before the sweep began follows it too, and is free again when it is left', async () => {
  const { computer, window } = await sweeping();
  const other = await computer.open();
  window.session.leave();
  await takenUp();
  expect(window.session.sweep.value).toBeNull();
  expect(other.session.sweep.value).toBeNull();
  expect(roles(window, other)).toEqual(['owner', 'owner']);
  expect('live' in computer.disk).toBe(false);
  expect((await other.session.begin({ with: 'practice', arrows: 'absent' })).ok).toBe(true);
  await takenUp();
  expect(roles(window, other)).toEqual(['follower', 'owner']);
});

test('the far view is switched by a word in either window, and no sweep moves', async () => {
  const { computer, window } = await sweeping();
  const other = await computer.open();
  await window.tell('far view');
  expect(window.session.settings.value.look.far).toBe(true);
  expect(window.session.heard.value).toMatchObject({ words: 'far view', became: 'on' });
  await takenUp();
  await other.tell('far view');
  await takenUp();
  expect([window, other].map(({ session }) => session.settings.value.look.far)).toEqual([false, false]);
  expect(computer.journal()).toEqual(['opened']);
});

test('when the window that runs the sweep closes, the other one takes it up', async () => {
  const { computer, window } = await sweeping();
  const other = await computer.open();
  await window.tell('holding');
  await window.crash();
  await takenUp();
  expect(roles(other)).toEqual(['owner']);
  expect(computer.journal().at(-1)).toBe('cut off');
  await other.tell('holding');
  expect(phaseOf(other)).toBe('holding');
});

test('a window can take the sweep over; the other one follows from then on and writes nothing', async () => {
  const { computer, window } = await sweeping();
  const other = await computer.open();
  other.session.takeOver();
  await takenUp();
  expect(roles(window, other)).toEqual(['follower', 'owner']);
  await other.tell('holding');
  await window.tell('flicker');
  expect(computer.journal()).toEqual(['opened', 'began']);
  expect(phaseOf(window)).toBe('holding');
});

test('a second sweep cannot be begun while one is under way', async () => {
  const { computer, window } = await sweeping();
  const other = await computer.open();
  for (const { session } of [window, other]) expect(await session.begin({ with: 'practice', arrows: 'absent' })).toMatchObject({ ok: false });
});

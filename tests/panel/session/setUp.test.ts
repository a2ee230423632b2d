// Contract of the set-up in a session: what was noted lies with the sweep on disk, until its first hold settles the plan;
// while a walk attends, words and presses are its own and the sweep does not move.
import { expect, test } from 'vitest';
import type { Input } from '../../../src/sweep/inputs.ts';
import { phaseOf, sweeping } from './sweeping.ts';
import { Computer, settle, Window } from './world.ts';

const BENCH = { ticked: ['tripod'], readings: [{ reads: 'temperature', celsius: 20 }] };

test('before the first hold the set-up is written into the opening of the journal', async () => {
  const { computer, window } = await sweeping();
  expect(window.session.noteBench(BENCH)).toBe(true);
  await settle();
  expect(computer.disk['live']).toMatchObject([{ did: 'opened', plan: { bench: BENCH } }]);
  expect(window.session.sweep.value?.plan.bench).toEqual(BENCH);
  expect(phaseOf(window)).toBe('dialling');
});

test('after the first hold it is refused, and the plan stays as it was', async () => {
  const { window } = await sweeping();
  await window.tell('holding');
  expect(window.session.noteBench(BENCH)).toBe(false);
  expect(window.session.sweep.value?.plan.bench).toBe(undefined);
});

test('a walk takes its words and the switch for itself while it attends', async () => {
  const { window } = await sweeping({ voice: { listen: 'browser' } });
  const taken: Input['told'][] = [];
  const stop = window.session.attend({ words: ['next', 'back', 'repeat'], take: (input) => taken.push(input.told) });
  expect(window.ear?.onHeard([{ text: 'next' }], true)).toBe(true);
  expect(window.ear?.onHeard([{ text: 'holding' }], true)).toBe(false);
  await settle();
  expect([taken, phaseOf(window)]).toEqual([['next'], 'dialling']);
  stop();
  window.ear?.onHeard([{ text: 'holding' }], true);
  await settle();
  expect([taken, phaseOf(window)]).toEqual([['next'], 'holding']);
});

test('a sweep asked for while what is stored is still being read begins when it has been read', async () => {
  const { session } = new Window(new Computer());
  expect(await session.begin({ with: 'practice', arrows: 'absent' })).toMatchObject({ ok: true });
  expect(session.sweep.value?.plan.practice).not.toBeNull();
});

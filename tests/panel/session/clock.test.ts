// Contract of the sweep's clocks in a session: the end of a hold, unanswered questions, the counted pace, and sleep.
import { expect, test } from 'vitest';
import { seconds } from '../../../src/units.ts';
import { phaseOf, sweeping } from './sweeping.ts';

test('when the hold time has run the end is sounded and an answer is waited for', async () => {
  const { computer, window } = await sweeping();
  await window.tell('holding');
  await window.ring('hold time');
  expect(phaseOf(window)).toBe('judging');
  expect(computer.log.at(-1)).toBe('tone end');
  await window.tell('solid');
  expect(window.session.sweep.value?.holds.at(-1)?.verdict.light).toBe('steady');
});

test('a hold whose alarm rings late by what a hidden window may take still counts', async () => {
  const { window } = await sweeping();
  await window.tell('holding');
  await window.ring('hold time', 1.1);
  expect(phaseOf(window)).toBe('judging');
});

test('a hold during which the computer slept does not count', async () => {
  const { computer, window } = await sweeping();
  await window.tell('holding');
  await window.ring('hold time', 1800);
  expect(phaseOf(window)).toBe('dialling');
  expect(computer.journal().at(-1)).toBe('cut off');
});

test('from the beginning of a hold to its verdict time only runs, whatever becomes of the date', async () => {
  const { window } = await sweeping();
  expect(window.steady).toBe(false);
  await window.tell('holding');
  expect(window.steady).toBe(true);
  await window.ring('hold time');
  expect(window.steady).toBe(true);
  await window.tell('solid');
  expect(window.steady).toBe(false);
});

test('nobody answers: asked once more, then the hold is asked for again', async () => {
  const { computer, window } = await sweeping();
  await window.tell('holding');
  await window.ring('hold time');
  await window.ring('answer');
  expect(computer.log.at(-1)).toBe('say Was it steady?');
  await window.ring('answer');
  expect(computer.log.at(-1)).toMatch(/^say Again\. (Plus|Minus|Zero)/);
  expect(phaseOf(window)).toBe('dialling');
});

test('with a counted pace the hold begins by itself when the time to dial is over', async () => {
  const { window } = await sweeping({ manner: { pace: { set: 'counted', toDial: seconds(6) } } });
  await window.ring('dial');
  expect(phaseOf(window)).toBe('holding');
});

test('with a counted pace a computer that wakes from sleep does not count anyone in', async () => {
  const { window } = await sweeping({ manner: { pace: { set: 'counted', toDial: seconds(6) } } });
  await window.ring('dial', 600);
  expect(phaseOf(window)).toBe('paused');
});

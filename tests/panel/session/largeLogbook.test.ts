// Contract of a start with a large logbook: a sweep under way goes on at once, and what earlier sweeps have a say in waits for them.
import { expect, test } from 'vitest';
import { sweepRecord, T0 } from '../../logbook/libraryWith.ts';
import { phaseOf, sweeping } from './sweeping.ts';
import { settle, type Computer, type Window } from './world.ts';

/** A window on a sweep under way, opened anew over a logbook that takes long to read. */
async function openedAnew(): Promise<{ computer: Computer; window: Window; read: () => Promise<void> }> {
  const { computer, window: first } = await sweeping();
  await first.tell('holding');
  await first.tell('flicker');
  computer.disk['record:earlier'] = sweepRecord('earlier', T0, 1, 5);
  await first.crash();
  let over = (): void => undefined;
  computer.reads = new Promise((done) => {
    over = done;
  });
  const window = await computer.open();
  const read = async (): Promise<void> => {
    over();
    await settle();
  };
  return { computer, window, read };
}

test('the sweep stands there and takes a hold while the logbook is still being read', async () => {
  const { window, read } = await openedAnew();
  expect(window.session.reading.value).toBeGreaterThan(0);
  expect(window.session.records.value).toEqual([]);
  expect([window.session.role.value, phaseOf(window), window.session.sweep.value?.holds.length]).toEqual(['owner', 'dialling', 1]);
  await window.tell('holding');
  await window.tell('nothing');
  await read();
  expect(window.session.reading.value).toBeNull();
  expect(window.session.sweep.value?.holds).toHaveLength(2);
  expect(window.session.records.value.map(({ id }) => id)).toEqual(['earlier']);
});

test('what it is about is told when the logbook has been read, and until then a sentence says how far that is', async () => {
  const { window, read } = await openedAnew();
  const told = window.session.describe({ focalLength: 85 });
  expect(told).toMatchObject({ ok: false, fault: { sentence: expect.stringMatching(/^Reading the logbook: \d+%\.$/) } });
  await read();
  expect(window.session.describe({ focalLength: 85 })).toMatchObject({ ok: true });
});

test('a sweep that is over and left meanwhile is in the logbook with the others when they have been read', async () => {
  const { computer, window, read } = await openedAnew();
  const { id } = window.session.sweep.value!;
  await window.tell('finish');
  window.session.leave();
  await settle();
  expect(phaseOf(window)).toBe('finished');
  await read();
  expect(phaseOf(window)).toBeUndefined();
  expect(window.session.records.value.map((record) => record.id).toSorted()).toEqual([id, 'earlier'].toSorted());
  expect(Object.keys(computer.disk)).not.toContain('live');
});

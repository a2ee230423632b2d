// Contract of last values across computers: off until asked for, the later one stands, both stay in the history, nothing is
// overwritten silently, and what this computer has put there is taken out when it is switched off.
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { unknownConditions } from '../../../src/logbook/conditions.ts';
import { ALL_BYTES, ITEM_BYTES } from '../../../src/logbook/sync/pack.ts';
import { millimetres, steps } from '../../../src/units.ts';
import { addKit } from './sweeping.ts';
import { Account, Computer, settle, type Window } from './world.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Long enough for an exchange that was put off. */
async function quiet(): Promise<void> {
  for (let turn = 0; turn < 3; turn++) {
    await vi.advanceTimersByTimeAsync(6000);
    await settle();
  }
}

/** A computer of the account with the same kit as the others, set up by hand. */
async function computerOf(account: Account, at = 0): Promise<{ computer: Computer; window: Window }> {
  const computer = new Computer(account);
  computer.pass(at);
  const window = await computer.open();
  addKit(window);
  await settle();
  return { computer, window };
}

function enter({ session }: Window, value: number): void {
  const [situation] = session.kit.value.situations;
  if (!situation) throw new Error('no situation');
  const subject = { situation: situation.id, body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: millimetres(85), distance: millimetres(4250) };
  const entered = session.enter({ at: session.clock(), subject, value: steps(value), record: null, conditions: unknownConditions(session.clock()) });
  expect(entered).toEqual({ ok: true });
}

const valuesIn = ({ session }: Window): number[] => session.entries.value.toSorted((a, b) => a.at - b.at).map(({ value }) => value);
const troublesIn = ({ session }: Window): string[] => session.troubles.value.map(({ sentence }) => sentence);

describe('last values between two computers', () => {
  test('stay where they are until the person asks for it', async () => {
    const account = new Account();
    const { window } = await computerOf(account);
    enter(window, 3);
    await quiet();
    expect([account.carried, account.writes]).toEqual([{}, 0]);
  });

  test('reach the other, where the later one stands, both are in the history, and the change is told', async () => {
    const account = new Account();
    const bench = await computerOf(account);
    const laptop = await computerOf(account, 3600);
    enter(bench.window, 3);
    enter(laptop.window, 7);
    bench.window.session.syncValues(true);
    laptop.window.session.syncValues(true);
    await quiet();
    expect([valuesIn(bench.window), valuesIn(laptop.window)]).toEqual([
      [3, 7],
      [3, 7],
    ]);
    expect(new Set(bench.window.session.entries.value.map(({ subject }) => subject.situation)).size).toBe(1);
    expect(troublesIn(bench.window)).toEqual([expect.stringMatching(/later value for Orrin 85 f\/1.8 on Velde M1: \+7 in place of \+3\. Both stay/)]);
    expect(troublesIn(laptop.window)).toEqual([]);
    expect(Object.keys(bench.computer.disk).filter((key) => key.startsWith('entry:'))).toHaveLength(2);
  });

  test('are told only when they are on disk here', async () => {
    const account = new Account();
    const bench = await computerOf(account);
    const laptop = await computerOf(account, 3600);
    enter(bench.window, 3);
    enter(laptop.window, 7);
    bench.window.session.syncValues(true);
    await quiet();
    const go = bench.computer.stall();
    laptop.window.session.syncValues(true);
    await quiet();
    expect([valuesIn(bench.window), troublesIn(bench.window)]).toEqual([[3, 7], []]);
    await go();
    expect(Object.keys(bench.computer.disk).filter((key) => key.startsWith('entry:'))).toHaveLength(2);
    expect(troublesIn(bench.window)).toEqual([expect.stringMatching(/\+7 in place of \+3/)]);
  });

  test('are written once a while, however much is entered, and not again when nothing has changed', async () => {
    const account = new Account();
    const { window, computer } = await computerOf(account);
    await computer.open();
    window.session.syncValues(true);
    await quiet();
    const before = account.writes;
    for (let value = -8; value <= 8; value++) enter(window, value);
    await quiet();
    expect(account.writes - before).toBe(1);
    await quiet();
    expect(account.writes - before).toBe(1);
    for (const [key, list] of Object.entries(account.carried)) expect(key.length + JSON.stringify(list).length).toBeLessThan(ITEM_BYTES);
    expect(JSON.stringify(account.carried).length).toBeLessThan(ALL_BYTES);
  });

  test('leave the account when this computer no longer wants it, and only those of this computer', async () => {
    const account = new Account();
    const bench = await computerOf(account);
    const laptop = await computerOf(account, 3600);
    enter(bench.window, 3);
    enter(laptop.window, 7);
    for (const { window } of [bench, laptop]) window.session.syncValues(true);
    await quiet();
    bench.window.session.syncValues(false);
    await quiet();
    expect(JSON.stringify(account.carried)).toMatch(/,7,/);
    expect(JSON.stringify(account.carried)).not.toMatch(/,3,/);
    enter(bench.window, 5);
    await quiet();
    expect(valuesIn(laptop.window)).toEqual([3, 7]);
  });

  test('that cannot be carried now are told, and carried as soon as that works', async () => {
    const account = new Account();
    const { window } = await computerOf(account);
    enter(window, 3);
    account.down = true;
    window.session.syncValues(true);
    await quiet();
    expect(troublesIn(window)).toEqual([expect.stringMatching(/^The browser’s sync does not work just now/)]);
    account.down = false;
    await vi.advanceTimersByTimeAsync(61_000);
    await settle();
    expect([troublesIn(window), Object.keys(account.carried).length]).toEqual([[], 1]);
  });

  test('are exchanged after the panel was closed and opened again', async () => {
    const account = new Account();
    const bench = await computerOf(account);
    bench.window.session.syncValues(true);
    await quiet();
    await bench.window.crash();
    const laptop = await computerOf(account);
    enter(laptop.window, 7);
    laptop.window.session.syncValues(true);
    await quiet();
    const again = await bench.computer.open();
    await quiet();
    expect(valuesIn(again)).toEqual([7]);
  });
});

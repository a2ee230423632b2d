// The computer's clock is set by an hour while a sweep goes on: a hold takes its time by a clock that nobody sets, and what is
// dated is dated by the one that was set. Only the date of the panel is changed here; the browser itself knows nothing of it.
import { expect, onTestFinished, test } from 'vitest';
import type { LogRecord } from '../../src/logbook/record.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { untilEndsWith } from './journal.ts';
import { press, seatAt, until, untilPhase, type Seat } from './seat.ts';
import { beginWith, holdOnce, keys, shortenHolds, untilFound } from './sweeping.ts';

const HOUR = 3_600_000;
const KIT = { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' };

const setClock = (seat: Seat, by: number): Promise<void> =>
  seat.evaluate((hours) => {
    const before = Date.now.bind(Date);
    Date.now = () => before() + hours;
  }, by);

async function atWork(): Promise<{ chromium: Chromium; seat: Seat }> {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const seat = seatAt(await chromium.openPanel());
  await shortenHolds(seat);
  await beginWith(seat, KIT);
  await holdOnce(seat, () => 'flicker', keys);
  return { chromium, seat };
}

async function inHold(seat: Seat): Promise<void> {
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
}

async function recordsIn({ worker }: Chromium): Promise<readonly LogRecord[]> {
  const stored = await worker.evaluate(() => chrome.storage.local.get(null));
  return Object.entries(stored).flatMap(([key, value]) => (key.startsWith('record:') ? [value as LogRecord] : []));
}

type Noting = Window & { toGo: number[] };

/** Notes the seconds that the panel shows as still to hold, from now on. */
const noteSeconds = (seat: Seat): Promise<void> =>
  seat.evaluate(() => {
    const noted: number[] = ((window as unknown as Noting).toGo = []);
    const note = (): void => {
      const shown = Number(document.querySelector('.seconds')?.textContent ?? NaN);
      if (Number.isFinite(shown) && shown !== noted.at(-1)) noted.push(shown);
    };
    new MutationObserver(note).observe(document.body, { subtree: true, childList: true, characterData: true });
  });

const secondsNoted = (seat: Seat): Promise<number[]> => seat.evaluate(() => (window as unknown as Noting).toGo);

test('set back by an hour in mid-hold, the hold counts down and runs its time, and the record is dated by the new time', async () => {
  const { chromium, seat } = await atWork();
  await inHold(seat);
  await noteSeconds(seat);
  await setClock(seat, -HOUR);
  await untilPhase(seat, 'judging');
  const noted = await secondsNoted(seat);
  expect(noted).toContain(1);
  expect(noted).toEqual(noted.toSorted((a, b) => b - a));
  await press(seat, 's');
  await until(seat, 'the second hold', ({ holds }) => holds.length === 2);
  const [began, ran] = (await untilEndsWith(chromium, 'began', 'ran', 'judged')).slice(-3);
  expect(ran!.at - began!.at).toBeGreaterThanOrEqual(2950);
  expect(ran!.at - began!.at).toBeLessThan(HOUR / 60);

  await press(seat, 'x');
  await untilFound(seat);
  await expect.poll(() => recordsIn(chromium)).toHaveLength(1);
  const records = await recordsIn(chromium);
  expect(Math.abs(records[0]!.finished - (Date.now() - HOUR))).toBeLessThan(60_000);
});

test('set forward by an hour in mid-hold, as when the computer slept, nothing is judged: the hold is asked for again and then counts', async () => {
  const { chromium, seat } = await atWork();
  const { value } = await untilPhase(seat, 'dialling');
  await inHold(seat);
  await setClock(seat, HOUR);
  const back = await until(seat, 'the hold asked for again', ({ phase }) => phase !== 'holding');
  expect(back).toMatchObject({ phase: 'dialling', value });
  expect(back.holds).toHaveLength(1);
  await untilEndsWith(chromium, 'cut off');
  await inHold(seat);
  await untilPhase(seat, 'judging');
  await press(seat, 's');
  await until(seat, 'the second hold', ({ holds }) => holds.length === 2);
});

test('set forward and back between holds, every hold counts and nothing waits for the hour', async () => {
  const { seat } = await atWork();
  for (const [done, by] of [HOUR, -HOUR, -HOUR, HOUR].entries()) {
    await setClock(seat, by);
    await inHold(seat);
    await untilPhase(seat, 'judging');
    await press(seat, done % 2 === 0 ? 'f' : 'd');
    const { value, holds } = await until(seat, `${done + 2} holds`, (seen) => seen.holds.length === done + 2 && seen.phase === 'dialling');
    expect([value !== null, holds.length]).toEqual([true, done + 2]);
  }
});

// The browser is stopped in the middle of a hold, as a computer short of everything does, and goes on: what was lost of the
// hold is not judged, and a stop that ends in time costs nothing.
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium, type Chromium } from './chromium.ts';
import { untilEndsWith } from './journal.ts';
import { look, press, seatAt, until, untilPhase } from './seat.ts';
import { holdOnce, keys } from './sweeping.ts';
import { practiceSweep, putUnderWay } from './underWay.ts';

/** Of a hold of three seconds: a stop beyond its end by more than a hidden window may take, and one within it. Milliseconds. */
const LONG = 7000;
const SHORT = 1200;

async function atHold(): Promise<{ chromium: Chromium; seat: ReturnType<typeof seatAt> }> {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  await putUnderWay(chromium, practiceSweep(7));
  const seat = seatAt(await chromium.openPanel());
  await untilPhase(seat, 'dialling');
  await holdOnce(seat, () => 'flicker', keys);
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  return { chromium, seat };
}

/** Every process of the browser stands still for so long. */
async function stopFor({ browser }: Chromium, time: number): Promise<void> {
  const group = browser.process()?.pid;
  if (group === undefined) throw new Error('The browser is not ours to stop.');
  process.kill(-group, 'SIGSTOP');
  await new Promise((go) => setTimeout(go, time)).finally(() => process.kill(-group, 'SIGCONT'));
}

test('a hold in which the browser stood still beyond its end is asked for again, and the next one counts', async () => {
  const { chromium, seat } = await atHold();
  const { value, holds } = await look(seat);
  await stopFor(chromium, LONG);
  const back = await until(seat, 'the hold asked for again', ({ phase }) => phase !== 'holding');
  expect(back).toMatchObject({ phase: 'dialling', holds });
  expect((await until(seat, 'the prompt', ({ announcement }) => announcement !== '')).announcement).toMatch(/^The hold was cut off, so it does not count\./);
  expect(back.value).toBe(value);
  expect(back.text).not.toContain('Nothing can be saved');
  await untilEndsWith(chromium, 'began', 'cut off');
  expect((await holdOnce(seat, () => 'nothing', keys)).next.holds).toHaveLength(2);
});

test('a hold in which it stood still for a moment runs its whole time, and counts', async () => {
  const { chromium, seat } = await atHold();
  await stopFor(chromium, SHORT);
  await untilPhase(seat, 'judging');
  const { holds } = await look(seat);
  await press(seat, 's');
  const { text } = await until(seat, 'the hold', (seen) => seen.holds.length > holds.length);
  expect(text).not.toContain('Nothing can be saved');
  const [began, ran] = (await untilEndsWith(chromium, 'began', 'ran', 'judged')).slice(-3);
  expect(ran!.at - began!.at).toBeGreaterThanOrEqual(2950);
});

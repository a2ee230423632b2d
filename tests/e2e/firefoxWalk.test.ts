// The set-up walk in the real sidebar of a real Firefox, by keyboard alone.
import { expect, onTestFinished, test } from 'vitest';
import { launchFirefox } from './firefox.ts';
import { benchIn, journalAt } from './journal.ts';
import { choose, press, seatAtSidebar, tabTo, type, untilPhase, untilText } from './seat.ts';
import { stepNow, stepsInAll, untilBench, untilStep } from './walking.ts';

test('the bench is reckoned, a reading is kept, every step is walked, and the sweep has it', async () => {
  const firefox = await launchFirefox();
  onTestFinished(firefox.close);
  const sidebar = await firefox.openSidebar();
  await sidebar.waitFor(() => document.querySelector('main')?.dataset['screen'] === 'start');
  await sidebar.click('h1');
  const seat = seatAtSidebar(sidebar);
  await untilBench(seat);
  await choose(seat, 'Walk through the set-up');
  await untilStep(seat, 1);
  await tabTo(seat, 'Correction stored now');
  await type(seat, '-3');
  await choose(seat, 'Keep this reading');
  await untilText(seat, 'Correction stored before: \u22123');
  const all = await stepsInAll(seat);
  for (let step = 1; step <= all; step += 1) {
    await untilStep(seat, step);
    await press(seat, 'n');
  }
  await untilText(seat, 'Ready for the first hold.');
  await press(seat, 'b');
  await untilStep(seat, all);
  expect(await stepNow(seat)).toBe(all);
  await press(seat, 'n');
  await untilText(seat, 'Ready for the first hold.');
  await press(seat, 'n');
  await untilPhase(seat, 'dialling');
  const storedBench = async () => benchIn(await journalAt(seat));
  await expect.poll(async () => (await storedBench())?.ticked).toHaveLength(all);
  expect((await storedBench())?.readings).toEqual([{ reads: 'old value', value: -3 }]);
});

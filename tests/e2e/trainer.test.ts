// The trainer in the real side panel: a round by keyboard, told as the eye sees the light, and holds by one switch; its
// screens have no fault at either width in either theme, and a picture of each is kept.
import { untilStart } from './sweeping.ts';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { faults } from './faults.ts';
import { choose, press, seatAt, until, untilText, type Seat } from './seat.ts';
import { long, pedal, short } from './switching.ts';

const phaseOf = (seat: Seat): Promise<string | null> => seat.evaluate(() => document.querySelector('[data-training]')?.getAttribute('data-training') ?? null);

async function untilTraining(seat: Seat, ...wanted: readonly (string | null)[]): Promise<void> {
  const deadline = performance.now() + 20_000;
  while (!wanted.includes(await phaseOf(seat))) {
    if (performance.now() > deadline) throw new Error(`The training never came to ${wanted.join(' or ')}.`);
    await new Promise((go) => setTimeout(go, 20));
  }
}

/** Watches the light until the time is up, as an eye does, and gives the key of what it saw. */
const watched = (seat: Seat): Promise<string> =>
  seat.evaluate(
    () =>
      new Promise<string>((tell) => {
        const began = performance.now();
        let wasLit = false;
        let late = false;
        let flickered = false;
        const timer = setInterval(() => {
          const lit = document.querySelector('[data-lit]')?.getAttribute('data-lit') === 'true';
          if (lit && !wasLit && !flickered && performance.now() - began > 120) late = true;
          if (wasLit && !lit) flickered = true;
          wasLit = lit;
          if (document.querySelector('[data-training]')?.getAttribute('data-training') === 'holding') return;
          clearInterval(timer);
          tell(flickered ? 'f' : late ? 'd' : wasLit ? 's' : 'n');
        }, 10);
      }),
  );

test('a round told by keyboard is scored in words and kept; one switch begins another and judges; no screen has a fault', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  await choose(seat, 'Practice camera');
  await choose(seat, 'Train your eye');
  await untilText(seat, 'Ten holds of two seconds');
  expect(await faults(page, 'training')).toEqual([]);
  await choose(seat, 'Begin a round');
  await untilTraining(seat, 'dialling');
  expect(await faults(page, 'training-ready')).toEqual([]);

  const wrong: string[] = [];
  for (let count = 1; count <= 10; count += 1) {
    await untilText(seat, `Hold ${count} of 10`);
    await press(seat, ' ');
    await untilTraining(seat, 'holding');
    const key = await watched(seat);
    if (count === 1) wrong.push(...(await faults(page, 'training-judging')));
    await press(seat, key);
  }
  expect(wrong).toEqual([]);
  const { text } = await until(seat, 'the score', (seen) => seen.text.includes('of 10 right'));
  expect(text).toMatch(/(8|9|10) of 10 right/);
  expect(text).toContain('1 round is kept');
  expect(await faults(page, 'training-over')).toEqual([]);

  const foot = pedal(seat, 'PageDown');
  await short(foot);
  await untilTraining(seat, 'dialling');
  await short(foot);
  await untilTraining(seat, 'judging');
  await short(foot);
  await untilText(seat, 'Hold 2 of 10');
  await short(foot);
  await untilTraining(seat, 'holding');
  await long(foot);
  await untilText(seat, 'Hold 3 of 10');
  await press(seat, 'Escape');
  await untilText(seat, '1 round is kept');
});

// The whole sweep with one switch, in the real side panel: a pedal and the pointer in turn, judged by the practice light.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { press, seatAt, until, untilPhase, untilText } from './seat.ts';
import { beginWith, holdOnce, practiceEye, shortenHolds, steadyEye, sweep, untilFound, type Told } from './sweeping.ts';
import { double, long, pedal, short, switches, takeBack, type Switch } from './switching.ts';
import { practiceBand, practiceSweep, putUnderWay } from './underWay.ts';

const SEED = 7;

async function pointerOnSwitch(page: Page): Promise<Switch> {
  const button = await page.waitForSelector('button.switch');
  return {
    async down() {
      const { x, y } = await button!.clickablePoint();
      await page.mouse.move(x, y);
      await page.mouse.down();
    },
    up: () => page.mouse.up(),
  };
}

test('short, double and long presses of a pedal and of the pointer run a sweep of the practice camera to an accepted outcome at the middle of its band', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  await putUnderWay(chromium, practiceSweep(SEED));
  const page = await chromium.openPanel();
  const seat = seatAt(page);
  await untilPhase(seat, 'dialling');

  const foot = pedal(seat, 'PageDown');
  const told: Told[] = [];
  await sweep(seat, practiceEye(seat), switches(foot, await pointerOnSwitch(page)), (hold) => told.push(hold));
  expect(new Set(told.map(({ word }) => word)).size).toBeGreaterThan(1);
  await short(foot);
  const found = await untilFound(seat);
  const { low, high } = practiceBand(SEED);
  expect(Math.abs((found ?? Infinity) - (low + high) / 2)).toBeLessThanOrEqual(2);
});

test('one switch grades a failing light, says it failed after the end tone, takes back, goes on from the offer and accepts it', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const seat = seatAt(await chromium.openPanel());
  await shortenHolds(seat);
  await beginWith(seat, { body: 'Velde M2', lens: 'Orrin 35 f/2', focalLength: '35' });
  const foot = pedal(seat, ' ');
  const hand = switches(foot);

  const { next } = await holdOnce(seat, () => 'flicker', hand);
  expect(next.holds.at(-1)).toContain('flickering: outside');
  expect((await holdOnce(seat, () => 'delayed', hand)).next.holds.at(-1)).toContain('late: outside');
  expect((await holdOnce(seat, () => 'nothing', hand)).next.holds.at(-1)).toContain('dark: outside');
  await short(foot);
  await untilPhase(seat, 'judging');
  await long(foot);
  expect((await untilPhase(seat, 'dialling')).holds.at(-1)).toContain('failed: outside');

  for (const left of [3, 2, 1, 0]) {
    await takeBack(foot);
    await until(seat, `${left} holds`, ({ phase, holds }) => phase === 'dialling' && holds.length === left);
  }
  await sweep(seat, steadyEye(-7, 1), hand);
  await long(foot);
  await untilPhase(seat, 'dialling');
  await press(seat, 'u');
  await untilPhase(seat, 'offered');
  await short(foot);
  expect(await untilFound(seat)).toBe(-3);
  await long(foot);
  await untilText(seat, '\u22123 is marked as entered in the camera.');
  await double(foot);
  await until(seat, 'the next lens', ({ screen }) => screen === 'next');
});

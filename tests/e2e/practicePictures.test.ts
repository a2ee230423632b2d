// Contract of practice pictures in a real Chromium and a real Firefox: the practice camera takes them, they are read as a person's files are, and a bracket of
// them finds the centre that its camera truly has.
import { expect, onTestFinished, test } from 'vitest';
import { picturedCamera } from '../../src/practice/pictures/picturedCamera.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { accessibilityFaults } from './axe.ts';
import { launchChromium } from './chromium.ts';
import { launchFirefox } from './firefox.ts';
import { picture, wear } from './screens.ts';
import { choose, seatAt, seatAtSidebar, until, untilText, type Seat } from './seat.ts';

const SEED = 41;

test('Chromium: a practice bracket finds the true centre of the practice camera, and what a step is worth', { timeout: 240_000 }, async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await seat.evaluate((seed: number) => {
    crypto.getRandomValues = (numbers) => {
      if (numbers instanceof Uint32Array) numbers.fill(seed);
      return numbers;
    };
  }, SEED);
  await toPracticePictures(seat);
  await seat.click('input[value="bracket"]');
  const began = performance.now();
  await choose(seat, 'Take the pictures');
  const { text } = await until(seat, 'the result', (seen) => seen.text.includes('What the pictures show together'), 180_000);
  console.log(`Chromium: ${((performance.now() - began) / 11000).toFixed(1)} s a practice picture, drawn and read`);
  expect(text).toContain('11 of 11 pictures read.');
  const { centre, step } = picturedCamera(SEED, USUAL_SCALE);
  const said = text.replaceAll('\u2212', '-');
  const [low, high] = figuresOf(/The pictures put the centre at \S+ \(95% between (\S+) and ([^)]+)\)/.exec(said));
  expect([low <= centre, centre <= high, high - low < 3]).toEqual([true, true, true]);
  const [worth, margin] = figuresOf(/One step moves focus by ([\d.]+) mm ± ([\d.]+) mm/.exec(said));
  expect(Math.abs(worth - step)).toBeLessThanOrEqual(margin + 0.05);
  await choose(seat, 'What this practice camera really is');
  await choose(seat, 'Figures of the series');
  for (const width of [180, 240, 360]) {
    await page.setViewport({ width, height: 700 });
    for (const theme of ['dark', 'light'] as const) {
      await wear(page, theme);
      await picture(page, `practice-bracket-${width}-${theme}`);
      expect(await accessibilityFaults(page)).toEqual([]);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  }
});

test('Firefox: the practice camera takes a picture there, too, and it is read', { timeout: 120_000 }, async () => {
  const firefox = await launchFirefox();
  onTestFinished(firefox.close);
  const seat = seatAtSidebar(await firefox.openSidebar());
  await untilText(seat, 'Practice camera');
  await seat.click('h1');
  await toPracticePictures(seat);
  await choose(seat, 'Take a picture');
  const { text } = await until(seat, 'the picture', (seen) => seen.text.includes('1 of 1 picture read.'), 60_000);
  expect(text).toMatch(/Focus fell .* the target/);
  expect(text).toContain('The target is found, and square to the camera.');
});

/** A screen that is not there yet has nothing to press. */
async function toPracticePictures(seat: Seat): Promise<void> {
  await untilText(seat, 'Practice camera');
  await choose(seat, 'Practice camera');
  await untilText(seat, 'A simulated body and lens');
  await choose(seat, 'Practice pictures');
  await untilText(seat, 'Simulated: the practice camera draws these pictures.');
}

const figuresOf = (found: RegExpExecArray | null): [number, number] => [Number(found?.[1] ?? Number.NaN), Number(found?.[2] ?? Number.NaN)];

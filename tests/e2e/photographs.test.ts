// Contract of photographs in a real Chromium and a real Firefox: whatever is brought in leads to figures or to its own one
// sentence, the rest goes on, the panel answers meanwhile, and nothing is sent anywhere.
import { expect, test } from 'vitest';
import { rigPicture } from '../photographs/rigPicture.ts';
import { giveBytes, giveDrawn } from './pictureFiles.ts';
import { BROWSERS, giveShots, lookAtAllOf, photographsIn, photographsOfSituation } from './photographsSeat.ts';
import { pngFile } from '../pngPixels.ts';
import { choose, look, press, until, untilText } from './seat.ts';

/** The middle of a picture, as if it was cropped. */
function cut({ width, height, rgba }: ReturnType<typeof rigPicture>, share: number): Parameters<typeof pngFile>[0] {
  const size = { width: Math.round(width * share), height: Math.round(height * share) };
  const [left, top] = [(width - size.width) >> 1, (height - size.height) >> 1];
  const kept = new Uint8ClampedArray(4 * size.width * size.height);
  for (let y = 0; y < size.height; y += 1) {
    const from = 4 * ((top + y) * width + left);
    kept.set(rgba.subarray(from, from + 4 * size.width), 4 * y * size.width);
  }
  return { ...size, rgba: kept };
}

const STRIPES = { type: 'image/png', width: 400, height: 300 } as const;

test.each(BROWSERS)('%s: pictures chosen, dropped and pasted are all read, each with its own sentence', { timeout: 90_000 }, async (browser) => {
  const seat = await photographsIn(browser);
  await giveDrawn(
    seat,
    [
      { ...STRIPES, name: 'chosen.png' },
      { ...STRIPES, name: 'chosen.jpg', type: 'image/jpeg' },
    ],
    'choose',
  );
  await giveDrawn(seat, [{ ...STRIPES, name: 'dropped.png' }], 'drop');
  await giveDrawn(
    seat,
    [
      { ...STRIPES, name: 'pasted.png' },
      { ...STRIPES, name: 'dot.png', width: 1, height: 1 },
    ],
    'paste',
  );
  const { text } = await untilText(seat, '5 of 5 pictures read.');
  expect(text).toContain('This picture is too small to be measured.');
});

test.each(BROWSERS)('%s: while 24 megapixels are read, a key is answered within 50 ms', { timeout: 120_000 }, async (browser) => {
  const seat = await photographsIn(browser);
  await seat.evaluate(() => {
    const { dataset } = document.documentElement;
    document.addEventListener('keydown', ({ timeStamp }) =>
      requestAnimationFrame(() => (dataset['slowest'] = String(Math.max(Number(dataset['slowest'] ?? 0), performance.now() - timeStamp)))),
    );
  });
  await giveDrawn(seat, [{ name: 'large.jpg', type: 'image/jpeg', width: 6000, height: 4000 }], 'choose');
  let pressed = 0;
  while ((await look(seat)).text.includes('0 of 1')) {
    await press(seat, 'Shift');
    pressed += 1;
  }
  const slowest = await seat.evaluate(() => Number(document.documentElement.dataset['slowest']));
  const took = await untilText(seat, '1 of 1 picture read.');
  expect(took.text).toContain('6,000 × 4,000 pixels');
  console.log(`${browser}: ${pressed} keys while a picture was read, the slowest answered after ${slowest.toFixed(0)} ms`);
  expect(pressed).toBeGreaterThan(2);
  expect(slowest).toBeLessThanOrEqual(50);
});

const BEHIND = pngFile(rigPicture(30));

test('Chromium: a picture of target and ramp, opened from its situation, leads to figures; no screen of it has a fault', { timeout: 120_000 }, async () => {
  const { page, seat } = await photographsOfSituation();
  await giveBytes(seat, 'behind.png', BEHIND);
  const { text } = await untilText(seat, '1 of 1 picture read.');
  expect(text).toMatch(/Not sharp enough\. Focus fell (29|30|31) mm behind the target\. 95% sure: between .* and .* mm behind\./);
  expect(text).toContain('The target is found, and square to the camera.');
  await choose(seat, 'Edges at 100%');
  await choose(seat, 'Figures');
  await lookAtAllOf(page, 'photographs');
});

test('Chromium: a check of the value finds a shift against live view, and asks for live view where it is missing', { timeout: 240_000 }, async () => {
  const { page, seat } = await photographsOfSituation();
  await seat.click('input[value="check"]');
  await untilText(seat, 'Turn focus far to the near side');
  await giveShots(seat, [0, 15, 13, 14.5, 14, 15.2]);
  await giveBytes(seat, 'shot-7.png', pngFile(cut(rigPicture(0), 0.8)));
  const { text } = await until(seat, 'the result', (seen) => seen.text.includes('What the pictures show together'), 120_000);
  expect(text).toContain('7 of 7 pictures read.');
  expect(text).toMatch(/Shifted: with \+5, focus falls 1[345] mm ± [\d.]+ mm behind the target\./);
  expect(text).toMatch(/would undo it, by an estimate of what a step is worth: try/);
  expect(text).toContain('Taken from another distance, or cropped. It stays out of this series.');
  expect(text).not.toContain('No picture was focused in live view');
  await choose(seat, 'Figures of the series');
  await choose(seat, 'Each picture');
  await lookAtAllOf(page, 'check');
  await seat.click('.pictures li:first-child input[value="near"]');
  const without = await untilText(seat, 'No picture was focused in live view');
  expect(without.text).toContain('6 shots with autofocus.');
  expect(await page.$$eval('.pictures li:nth-child(2) input:checked', ([input]) => (input as HTMLInputElement).value)).toBe('far');
});

test('Chromium: a bracket of corrections finds its centre beside the band’s, and what one step is worth', { timeout: 240_000 }, async () => {
  const { page, seat } = await photographsOfSituation();
  await seat.click('input[value="bracket"]');
  await untilText(seat, 'Then take one picture with autofocus at each of these values');
  await choose(seat, 'Set up for pictures');
  await lookAtAllOf(page, 'bracket-order');
  const order = await page.$$eval('.values li', (items) => items.map(({ textContent }) => Number(textContent?.replace('\u2212', '-'))));
  expect(order).toHaveLength(10);
  // Three millimetres a step, focus on the target at +7: the middle of the band that was measured.
  await giveShots(seat, [0, ...order.map((value, at) => 3 * (value - 7) + (at % 2 === 0 ? 0.7 : -0.7))]);
  const { text } = await until(seat, 'the result', (seen) => seen.text.includes('What the pictures show together'), 180_000);
  expect(text).toMatch(/The pictures put the centre at \+(6\.[5-9]|7|7\.[1-5]) \(95% between/);
  expect(text).toMatch(/It agrees with the band’s centre, \+7;/);
  expect(text).toContain('Value to enter: +7.');
  expect(text).toMatch(/One step moves focus by (2\.9|3|3\.1) mm ± [\d.]+ mm at the target\./);
  await choose(seat, 'Figures of the series');
  await choose(seat, 'Each picture');
  await lookAtAllOf(page, 'bracket');
});

test('Firefox: the same picture is found; without its camera it says what must be known, and gives no figure of focus', { timeout: 120_000 }, async () => {
  const seat = await photographsIn('Firefox');
  await giveBytes(seat, 'behind.png', BEHIND);
  const { text } = await untilText(seat, '1 of 1 picture read.');
  expect(text).toContain('The target is found, and square to the camera.');
  expect(text).toContain('To tell where focus fell, the focal length, the aperture and the size of the sensor must be known.');
  expect(text).not.toContain('Focus error');
});

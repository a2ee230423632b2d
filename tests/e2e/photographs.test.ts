// Contract of photographs in a real Chromium and a real Firefox: whatever is brought in leads to figures or to its own one
// sentence, the rest goes on, the panel answers meanwhile, and nothing is sent anywhere.
import { expect, test } from 'vitest';
import { rigPicture } from '../photographs/rigPicture.ts';
import { giveBytes, giveDrawn } from './pictureFiles.ts';
import { BROWSERS, lookAtAllOf, photographsIn, photographsOfSituation } from './photographsSeat.ts';
import { pngFile } from '../pngPixels.ts';
import { choose, look, press, untilText } from './seat.ts';

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

test.each(BROWSERS)('%s: while 24 megapixels are read, keys are answered', { timeout: 120_000 }, async (browser) => {
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
  // How soon is measured by `npm run bench -- --only "reading time"`.
  expect(pressed).toBeGreaterThan(2);
  expect(slowest).toBeGreaterThan(0);
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

test('Firefox: the same picture is found; without its camera it says what must be known, and gives no figure of focus', { timeout: 120_000 }, async () => {
  const seat = await photographsIn('Firefox');
  await giveBytes(seat, 'behind.png', BEHIND);
  const { text } = await untilText(seat, '1 of 1 picture read.');
  expect(text).toContain('The target is found, and square to the camera.');
  expect(text).toContain('To tell where focus fell, the focal length, the aperture and the size of the sensor must be known.');
  expect(text).not.toContain('Focus error');
});

// Contract of photographs in a real Chromium and a real Firefox: whatever is brought in leads to figures or to its own one
// sentence, the rest goes on, the panel answers meanwhile, and nothing is sent anywhere.
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { launchFirefox } from './firefox.ts';
import { giveDrawn } from './pictureFiles.ts';
import { choose, look, press, seatAt, seatAtSidebar, until, untilText, type Seat } from './seat.ts';

const BROWSERS = ['Chromium', 'Firefox'] as const;

async function seatIn(browser: (typeof BROWSERS)[number]): Promise<Seat> {
  const launched = await (browser === 'Chromium' ? launchChromium() : launchFirefox());
  onTestFinished(launched.close);
  const seat = 'openPanel' in launched ? seatAt(await launched.openPanel()) : seatAtSidebar(await launched.openSidebar());
  await untilText(seat, 'Check with photographs');
  await seat.click('h1');
  await choose(seat, 'Check with photographs');
  await until(seat, 'the photographs', ({ screen, text }) => screen === 'photographs' && text.includes('drop them here'));
  return seat;
}

const STRIPES = { type: 'image/png', width: 400, height: 300 } as const;

test.each(BROWSERS)('%s: pictures chosen, dropped and pasted are all read, each with its own sentence', { timeout: 90_000 }, async (browser) => {
  const seat = await seatIn(browser);
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
  const seat = await seatIn(browser);
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

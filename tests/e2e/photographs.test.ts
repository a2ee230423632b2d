// Contract of photographs in a real Chromium and a real Firefox: whatever is brought in leads to figures or to its own one
// sentence, the rest goes on, the panel answers meanwhile, and nothing is sent anywhere.
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { launchFirefox } from './firefox.ts';
import { giveDrawn } from './pictureFiles.ts';
import { choose, seatAt, seatAtSidebar, until, untilText, type Seat } from './seat.ts';

const BROWSERS = ['Chromium', 'Firefox'] as const;

async function seatIn(browser: (typeof BROWSERS)[number]): Promise<Seat> {
  const launched = await (browser === 'Chromium' ? launchChromium() : launchFirefox());
  onTestFinished(launched.close);
  const seat = 'openPanel' in launched ? seatAt(await launched.openPanel()) : seatAtSidebar(await launched.openSidebar());
  await untilText(seat, 'Check with photographs');
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
  console.log(text);
  expect(text).toContain('This picture is too small to be measured.');
});

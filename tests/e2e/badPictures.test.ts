// Contract of bad input among pictures, in a real Chromium and a real Firefox: each that cannot be measured says in one sentence what to
// do, the rest goes on, and no figure is told that the picture does not bear out.
import { expect, test } from 'vitest';
import { rigPicture } from '../photographs/rigPicture.ts';
import { giveBytes, giveDrawn, giveNamed } from './pictureFiles.ts';
import { BROWSERS, photographsIn } from './photographsSeat.ts';
import { pngFile } from '../pngPixels.ts';
import { choose, look, press, until, type Seat } from './seat.ts';

/** What stands in the card of each picture, by its name. */
const cards = (seat: Seat): Promise<Record<string, string>> =>
  seat.evaluate(() =>
    Object.fromEntries(
      Array.from(document.querySelectorAll('.pictures > li'), (card) => [
        card.querySelector('h2')?.textContent ?? '',
        Array.from(card.querySelectorAll('p'), ({ textContent }) => textContent).join(' '),
      ]),
    ),
  );

const GOOD = pngFile(rigPicture(30));
/** The first bytes of a picture of this size, without any of its pixels. */
function ofSize(width: number, height: number): Buffer {
  const file = pngFile({ width: 1, height: 1, rgba: new Uint8ClampedArray(4) });
  file.writeUInt32BE(width, 16);
  file.writeUInt32BE(height, 20);
  return file;
}

test.each(BROWSERS)(
  '%s: files that break off, are empty, no pictures, too large or too small each say so, and the one after them is read',
  { timeout: 120_000 },
  async (browser) => {
    const seat = await photographsIn(browser);
    await giveBytes(seat, 'empty.jpg', new Uint8Array());
    await giveBytes(seat, 'letter.jpg', Buffer.from('Dear reader, this is no picture at all.'));
    await giveBytes(seat, 'header alone.png', GOOD.subarray(0, 40));
    await giveBytes(seat, 'huge.png', ofSize(20_000, 10_000));
    await giveBytes(seat, 'dot.png', pngFile({ width: 1, height: 1, rgba: new Uint8ClampedArray(4) }));
    await giveBytes(seat, 'half.png', GOOD.subarray(0, GOOD.length >> 1));
    await giveDrawn(seat, [{ name: 'screen.png', type: 'image/png', width: 1440, height: 900 }], 'drop');
    await giveBytes(seat, 'good.png', GOOD);
    await until(seat, 'the last picture', ({ text }) => text.includes('8 of 8 pictures read.'), 90_000);
    const told = await cards(seat);
    for (const name of ['empty.jpg', 'letter.jpg', 'header alone.png']) expect(told[name]).toMatch(/^The browser finds no picture in this file\./);
    expect(told['huge.png']).toBe('This picture is too large to be read here. Bring in one of at most 110 megapixels.');
    expect(told['dot.png']).toMatch(/^This picture is too small to be measured\./);
    // A browser may show what there is of it: then a part is missing, and is told to be.
    expect(told['half.png']).toMatch(/finds no picture|No ramp was found|Only part of|No target was found/);
    expect(told['half.png']).not.toMatch(/\d mm/);
    expect(told['screen.png']).toMatch(/^No target was found\./);
    expect(told['good.png']).toContain('The target is found, and square to the camera.');
  },
);

test.each(BROWSERS)(
  '%s: five hundred pictures are all read while keys are answered, and stand in a check in their order',
  { timeout: 400_000 },
  async (browser) => {
    const seat = await photographsIn(browser);
    await seat.click('input[value="check"]');
    await seat.evaluate(() => {
      const { dataset } = document.documentElement;
      document.addEventListener('keydown', ({ timeStamp }) =>
        requestAnimationFrame(() => (dataset['slowest'] = String(Math.max(Number(dataset['slowest'] ?? 0), performance.now() - timeStamp)))),
      );
    });
    const grey = pngFile({ width: 240, height: 160, rgba: new Uint8ClampedArray(4 * 240 * 160).fill(160) });
    await giveNamed(
      seat,
      Array.from({ length: 500 }, (_, place) => `P${place + 1}.png`),
      grey,
    );
    const began = performance.now();
    let pressed = 0;
    while (!(await look(seat)).text.includes('500 of 500 pictures read.') && performance.now() - began < 300_000) {
      await press(seat, 'Shift');
      pressed += 1;
      await new Promise((go) => setTimeout(go, 50));
    }
    const slowest = await seat.evaluate(() => Number(document.documentElement.dataset['slowest']));
    console.log(
      `${browser}: 500 pictures in ${((performance.now() - began) / 1000).toFixed(0)} s, ${pressed} keys meanwhile, the slowest answered after ${slowest.toFixed(0)} ms`,
    );
    await choose(seat, 'Each picture');
    for (let more = 0; more < 3; more += 1) await choose(seat, 'Show more of 500');
    const told = await cards(seat);
    expect(Object.keys(told)).toHaveLength(500);
    expect(Object.values(told).every((sentence) => sentence.startsWith('No target was found.'))).toBe(true);
    expect(slowest).toBeGreaterThan(0);
  },
);

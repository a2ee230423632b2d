// How soon a key is answered while five hundred small pictures, dropped at once, are read: from the key to the frame that follows it, on the screen
// of a check, in the panel of a real Chromium and a real Firefox.
import type { Page } from 'puppeteer-core';
import { giveNamed } from '../../e2e/pictureFiles.ts';
import { pngFile } from '../../pngPixels.ts';
import { choose, look, press, seatAt, until, untilText } from '../../e2e/seat.ts';
import { most, shown, type Figure } from '../figure.ts';

const PICTURES = 500;
/** Milliseconds that all of them may take. */
const PATIENCE = 120_000;
/** Milliseconds from one key to the next. */
const APART = 20;

/** `page`: the panel in a tab, at its start. */
export async function keysMeanwhile(browser: string, page: Page): Promise<Figure[]> {
  const seat = seatAt(page);
  await untilText(seat, 'Check with photographs');
  await seat.click('h1');
  await choose(seat, 'Check with photographs');
  await until(seat, 'the photographs', ({ screen, text }) => screen === 'photographs' && text.includes('drop them here'));
  await seat.click('input[value="check"]');
  await page.evaluate(watchKeys);
  const grey = pngFile({ width: 240, height: 160, rgba: new Uint8ClampedArray(4 * 240 * 160).fill(160) });
  const names = Array.from({ length: PICTURES }, (_, place) => `P${place + 1}.png`);
  await giveNamed(seat, names, grey);
  const began = performance.now();
  const isRead = async (): Promise<boolean> => (await look(seat)).text.includes(`${PICTURES} of ${PICTURES} pictures read.`);
  while (!(await isRead())) {
    if (performance.now() - began > PATIENCE) throw new Error(`${browser}: the pictures are never read.`);
    await press(seat, 'Shift');
    await new Promise((go) => setTimeout(go, APART));
  }
  const took = performance.now() - began;
  const waits = (await page.evaluate(() => (globalThis as unknown as { waits: number[] }).waits)).toSorted((a, b) => a - b);
  return [
    shown(`${browser}: ${PICTURES} small pictures read, s`, took / 1000),
    shown(`${browser}: keys pressed meanwhile`, waits.length),
    shown(`${browser}: the middlemost key answered after, ms`, waits[waits.length >> 1] ?? Infinity),
    most(`${browser}: the slowest key answered after, ms`, waits.at(-1) ?? Infinity, 50),
  ];
}

/** Runs in the page. */
function watchKeys(): void {
  const waits: number[] = [];
  Object.assign(globalThis, { waits });
  document.addEventListener('keydown', ({ timeStamp }) => requestAnimationFrame(() => waits.push(performance.now() - timeStamp)));
}

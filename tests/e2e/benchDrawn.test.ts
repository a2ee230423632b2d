// Contract of the bench as it is seen in a real Chromium: folded it is short, what is pressed first is in sight, and on the drawing no
// word is cut or lies on another, as the browser really draws it, from the narrowest sidebar to a wide one.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { faults } from './faults.ts';
import { seatAt, tabTo, type, until, untilText, type Seat } from './seat.ts';
import { untilBench } from './walking.ts';

interface Seen {
  readonly height: number;
  readonly wide: number;
  readonly begin: number;
  readonly words: readonly { readonly text: string; readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }[];
}

async function see(page: Page, width: number): Promise<Seen> {
  await page.setViewport({ width, height: 640 });
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
  return page.evaluate(() => {
    const left = document.querySelector('.rig')?.getBoundingClientRect().left ?? 0;
    return {
      height: document.documentElement.scrollHeight,
      wide: document.documentElement.scrollWidth,
      begin: document.querySelector('.chief')?.getBoundingClientRect().bottom ?? Infinity,
      words: Array.from(document.querySelectorAll('.rig tspan'), (one) => {
        const box = one.getBoundingClientRect();
        return { text: one.textContent?.trim() ?? '', left: box.left - left, right: box.right - left, top: box.top, bottom: box.bottom };
      }),
    };
  });
}

/** Letters of neighbouring lines may reach into each other's line by a pixel or two, as in any text. */
const clash = (one: Seen['words'][number], other: Seen['words'][number]): boolean =>
  one.left < other.right - 1 && other.left < one.right - 1 && one.top < other.bottom - 3 && other.top < one.bottom - 3;

/** In place of what stands there. */
async function retype(seat: Seat, page: Page, field: string, text: string): Promise<void> {
  await tabTo(seat, field);
  await page.evaluate(() => (document.activeElement as HTMLInputElement).select());
  await type(seat, text);
}

test('folded the bench is at most 1,100 px high at 360 px, the way into the walk is in sight, and the drawing is whole at every width', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilBench(seat);
  const found: string[] = [];
  for (const distance of ['4.25', '0.6', '34']) {
    await retype(seat, page, 'Distance as measured', distance);
    await until(seat, distance, ({ text }) => text.includes(`${distance} m,`));
    for (const width of [180, 240, 360, 600]) {
      const { height, wide, begin, words } = await see(page, width);
      const inside = Math.min(width, 520) - 24;
      if (wide > width) found.push(`${distance} m at ${width}: ${wide} px wide`);
      if (width === 360) console.log(`the bench, ${distance} m: ${height} px high, first pressed down to ${Math.round(begin)} px`);
      if (width === 360 && height > 1100) found.push(`${distance} m: ${height} px high`);
      if (begin > 640) found.push(`${distance} m at ${width}: the walk begins at ${begin} px`);
      if (words.length < 8) found.push(`${distance} m at ${width}: only ${words.length} lines`);
      for (const [index, word] of words.entries()) {
        if (word.left < -1 || word.right > inside + 1) found.push(`${distance} m at ${width}: “${word.text}” is cut`);
        for (const other of words.slice(index + 1)) if (clash(word, other)) found.push(`${distance} m at ${width}: “${word.text}” lies on “${other.text}”`);
      }
    }
  }
  await untilText(seat, 'Use 50 focal lengths');
  expect([...found, ...(await faults(page, 'bench-folded'))]).toEqual([]);
});

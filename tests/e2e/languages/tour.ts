// Whoever goes through the panel in English and looks at every screen in each of the other languages, at every width: nothing may be cut,
// cross its frame or scroll sideways, and nothing may be left in English. A picture of each is kept for people to look at.
import type { Page } from 'puppeteer-core';
import { onTestFinished } from 'vitest';
import { launchChromium } from '../chromium.ts';
import { misses, sizeOf } from '../heights/measured.ts';
import { cutIn } from '../pseudo/cut.ts';
import { untilStart, type Tour } from '../routes/tour.ts';
import { picture } from '../screens.ts';
import { seatAt } from '../seat.ts';
import { brokenWords, cutPlaceholders } from '../sizes.ts';
import { leftIn, sentencesOn } from './left.ts';
import { inLanguage, openedIn, OTHERS } from './worn.ts';

const WIDTHS = [360, 240, 180];
/** What is printed is read at the width of paper, too. */
const PAPER = [720, ...WIDTHS];
/** Down to here a single word stands in one line; on paper down to 360 px. */
const WHOLE = 240;
const WHOLE_ON_PAPER = 360;
const PICTURED = 240;
/** What a language may need more than English: as much higher may a screen be. */
const HIGHER = 1.15;

/** `stored`: what the person has kept. `args`: of the browser. */
export async function setOut(stored: Readonly<Record<string, unknown>>, args: readonly string[] = []): Promise<Tour> {
  const chromium = await launchChromium({ args: [...args] });
  onTestFinished(chromium.close);
  await chromium.worker.evaluate((all) => chrome.storage.local.set(all), stored as Record<string, unknown>);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  return { chromium, page, seat, faults: [], seen: [], look };
}

async function look({ page, faults }: Tour, name: string, again?: (page: Page) => Promise<unknown>): Promise<void> {
  const isPanel = (await page.$('#panel')) !== null;
  const isPaper = !isPanel && (await page.$('#check, #ask')) === null;
  const english = isPanel ? await sentencesOn(page) : [];
  const sheets = isPaper ? await sheetsOf(page) : 0;
  for (const language of OTHERS) {
    const add = (all: readonly string[]): void => void faults.push(...all.map((one) => `${language}, ${one}`));
    if (isPanel) await inLanguage(page, language);
    else {
      await openedIn(page, language);
      await again?.(page);
    }
    for (const width of isPaper ? PAPER : WIDTHS) {
      await page.setViewport({ width, height: 640 });
      await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
      add(await cutIn(page, `${name} at ${width}`, false));
      // Japanese has no blanks, so it may break anywhere.
      if (width >= (isPaper ? WHOLE_ON_PAPER : WHOLE) && language !== 'ja')
        add((await brokenWords(page)).map((word) => `${name} at ${width}: “${word}” is broken`));
      if (width >= WHOLE) add((await cutPlaceholders(page)).map((one) => `${name} at ${width}: ${one}`));
      if (width === PICTURED) await picture(page, `${language}-${name}-${width}`);
      if (width === WIDTHS[0] && isPanel && (await isFolded(page))) add(misses(await sizeOf(page, name), HIGHER));
    }
    if (isPaper && (await sheetsOf(page)) !== sheets) add([`${name}: not ${sheets} sheets, as in English`]);
    if (isPanel) add(leftIn(english, await sentencesOn(page)).map((one) => `${name}: “${one}” is English`));
  }
  if (isPanel) await inLanguage(page, 'en');
}

/** How many it is printed on. */
const sheetsOf = async (page: Page): Promise<number> =>
  Buffer.from(await page.pdf({ preferCSSPageSize: true }))
    .toString('latin1')
    .split(/\/Type \/Page\b/).length - 1;

/** Held to a height is a screen as it opens. */
const isFolded = (page: Page): Promise<boolean> => page.evaluate(() => document.querySelector('main details[open]') === null);

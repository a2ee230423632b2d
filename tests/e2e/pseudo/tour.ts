// Whoever goes through the panel in the longer language, and looks at every screen at three widths: nothing may be cut, cross its frame or
// scroll sideways. A picture of each is kept for people to look at.
import { expect, onTestFinished } from 'vitest';
import { launchChromium } from '../chromium.ts';
import { untilStart, type Tour } from '../routes/tour.ts';
import { picture } from '../screens.ts';
import { seatAt } from '../seat.ts';
import { removeFolder, temporaryFolder } from '../temporary.ts';
import { cutIn } from './cut.ts';
import { inPseudoLanguage } from './pseudoLanguage.ts';
import { signsAfter } from './signs.ts';

const WIDTHS = [180, 240, 360];

/** `stored`: what the person has kept. `args`: of the browser. `rtl`: the language is written from right to left. */
export async function begin(stored: Record<string, unknown> = {}, args: readonly string[] = [], direction: 'ltr' | 'rtl' = 'ltr'): Promise<Tour> {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const chromium = await launchChromium({ extension: await inPseudoLanguage(folder, direction), args: [...args] });
  onTestFinished(chromium.close);
  await chromium.worker.evaluate((all) => chrome.storage.local.set(all), stored);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  return { chromium, page, seat, faults: [], seen: [], look };
}

/** Looks at what is shown at every width. */
async function look({ page, faults }: Tour, name: string): Promise<void> {
  expect(await page.evaluate(() => document.body.textContent), `${name} is in the language`).toMatch(/⟦/u);
  const mirrored = await page.evaluate(() => document.documentElement.dir === 'rtl');
  for (const width of WIDTHS) {
    await page.setViewport({ width, height: 640 });
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
    await picture(page, `${mirrored ? 'mirrored' : 'pseudo'}-${name}-${width}`);
    faults.push(...(await cutIn(page, `${name} at ${width}`)));
    if (mirrored) faults.push(...(await signsAfter(page, name)));
  }
}

/** What the tour found, once it is over. */
export function found({ seen, faults }: Tour): readonly string[] {
  console.log(`in the longer language: ${seen.length} screens at ${WIDTHS.join(', ')} px, ${faults.length} faults`);
  return faults;
}

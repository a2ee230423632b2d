// A person who goes from screen to screen of the panel and measures each as it opens.
import { onTestFinished } from 'vitest';
import { launchChromium } from '../chromium.ts';
import { settled, untilStart, type Tour } from '../routes/tour.ts';
import { seatAt } from '../seat.ts';
import { misses, measured, tableOf, type Measured } from './measured.ts';

export interface Walk extends Tour {
  readonly all: Measured[];
}

/** `stored`: what the person has kept. `args`: of the browser. However the walk ends, the table of its screens is printed. */
export async function setOut(stored: Readonly<Record<string, unknown>> = {}, args: readonly string[] = []): Promise<Walk> {
  const chromium = await launchChromium({ args: [...args] });
  onTestFinished(chromium.close);
  await chromium.worker.evaluate((all) => chrome.storage.local.set(all), stored as Record<string, unknown>);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  const all: Measured[] = [];
  onTestFinished(() => console.log(tableOf(all)));
  return { chromium, page, seat, seen: [], all, look: (tour, screen) => measure({ ...tour, all }, screen) };
}

export async function measure(walk: Walk, screen: string): Promise<void> {
  await settled(walk);
  walk.all.push(await measured(walk.page, screen));
}

/** A page in a tab of its own. */
export async function measurePage(walk: Walk, path: string, screen: string): Promise<void> {
  walk.page = await walk.chromium.openTab(path);
  await walk.page.waitForFunction(() => (document.querySelector('main')?.textContent ?? '').length > 20);
  await measure(walk, screen);
}

/** What on the walk missed its bound. */
export const missesOf = ({ all }: Walk): string[] => all.flatMap((one) => misses(one));

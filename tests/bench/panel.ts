// What the panel weighs, and how soon it is there: bytes over the wire and the first paint of the real side panel.
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { launchChromium } from '../e2e/chromium.ts';
import { most, shown, type Family } from './figure.ts';

const OPENINGS = 5;

export const panel: Family = {
  name: 'panel',
  async run() {
    const script = gzipSync(readFileSync('dist/chromium/panel.js'), { level: 9 }).length / 1000;
    const style = gzipSync(readFileSync('dist/chromium/panel.css'), { level: 9 }).length / 1000;
    const paints: number[] = [];
    for (let opening = 0; opening < OPENINGS; opening++) paints.push(await firstPaint());
    const sorted = paints.sort((a, b) => a - b);
    return [
      most('panel script, kB gzip', script, 40),
      shown('panel style, kB gzip', style),
      shown('first paint of the side panel: median, ms', sorted[Math.floor(OPENINGS / 2)] ?? 0),
      shown('first paint of the side panel: slowest, ms', sorted.at(-1) ?? 0),
    ];
  },
};

async function firstPaint(): Promise<number> {
  const chromium = await launchChromium();
  try {
    const page = await chromium.openPanel();
    return await page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN);
  } finally {
    await chromium.close();
  }
}

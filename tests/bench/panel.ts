// What the panel weighs, and how soon it is there: bytes over the wire and the first paint of the real side panel.
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Loading } from '../../manifest/loading.ts';
import { launchChromium } from '../e2e/chromium.ts';
import { most, shown, type Family } from './figure.ts';

const OPENINGS = 5;

export const panel: Family = {
  name: 'panel',
  needs: ['chromium'],
  async run() {
    const { atOnce, onDemand } = JSON.parse(readFileSync('dist/chromium.json', 'utf8')) as Loading;
    const paints: number[] = [];
    for (let opening = 0; opening < OPENINGS; opening++) paints.push(await firstPaint());
    const sorted = paints.sort((a, b) => a - b);
    return [
      most('panel script loaded at once, kB gzip', kilobytes(atOnce), 40),
      shown('panel script with all that is loaded on demand, kB gzip', kilobytes([...atOnce, ...onDemand])),
      shown('panel style, kB gzip', kilobytes(['dist/chromium/panel.css'])),
      shown('first paint of the side panel: median, ms', sorted[Math.floor(OPENINGS / 2)] ?? 0),
      shown('first paint of the side panel: slowest, ms', sorted.at(-1) ?? 0),
    ];
  },
};

const kilobytes = (files: readonly string[]): number =>
  files.reduce((sum, file) => sum + gzipSync(readFileSync(file), { level: 9 }).length, 0) / 1000;

async function firstPaint(): Promise<number> {
  const chromium = await launchChromium();
  try {
    const page = await chromium.openPanel();
    return await page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN);
  } finally {
    await chromium.close();
  }
}

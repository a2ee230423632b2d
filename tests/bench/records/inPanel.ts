// 20,000 records in the panel of a real Chromium: brought in from a backup, read at the start, and written out again. How soon the
// start is drawn is compared with an empty logbook in the same browser.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ElementHandle, Page } from 'puppeteer-core';
import { writeBackup } from '../../../src/logbook/backup/backup.ts';
import type { Library } from '../../../src/logbook/library.ts';
import { launchChromium } from '../../e2e/chromium.ts';
import { click } from '../../e2e/library/shelves.ts';
import { most, shown, type Figure } from '../figure.ts';
import { longWork } from './longWork.ts';
import { openings, type Opened } from './openings.ts';
import { NOW } from './years.ts';

const TURNS = 9;

export async function inPanel(library: Library, tell: (sentence: string) => void): Promise<Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'sweepbook-'));
  const chromium = await launchChromium();
  try {
    tell('the start, with nothing in the logbook');
    const empty = await openings(chromium, TURNS);
    tell('the backup is brought in');
    const file = join(folder, 'backup.json');
    writeFileSync(file, writeBackup(library, NOW));
    const into = await toFiles(await chromium.openTab());
    const bringing = await broughtIn(into, file);
    const written = await chromium.worker.evaluate(async () => (await chrome.storage.local.getKeys()).filter((key) => key.startsWith('record:')).length);
    await into.close();
    tell('the start, with all of it in the logbook');
    const full = await openings(chromium, TURNS, 1);
    tell('a backup is written');
    const out = await toFiles(await chromium.openTab());
    const writing = await writtenOut(out);
    return [...startFigures(empty, full), ...bringing, most('records missing after it', library.records.length - written, 0), ...writing];
  } finally {
    await chromium.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

function startFigures(empty: readonly Opened[], full: readonly Opened[]): Figure[] {
  const first = (all: readonly Opened[]): number => median(all.map((one) => one.first));
  const whole = (all: readonly Opened[]): number => median(all.flatMap((one) => one.whole ?? []));
  return [
    shown('nothing in the logbook: click to the start drawn, median, ms', first(empty)),
    shown('20,000 records: click to the start drawn, median, ms', first(full)),
    most('the start drawn with 20,000 records, in empty ones', first(full) / first(empty), 1.3),
    shown('nothing in the logbook: click to all that is stored, median, ms', whole(empty)),
    shown('20,000 records: click to all that is stored, once, ms', whole(full)),
  ];
}

const median = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;

async function toFiles(page: Page): Promise<Page> {
  await page.waitForFunction(() => document.querySelector('main')?.dataset['screen'] === 'start', { timeout: 0 });
  await click(page, 'Logbook');
  await click(page, 'Backup and tables');
  return page;
}

async function broughtIn(page: Page, file: string): Promise<Figure[]> {
  const field = (await page.waitForSelector('input[type="file"][accept*="json"]')) as ElementHandle<HTMLInputElement>;
  const reading = await longWork(
    'reading the backup and comparing it',
    page,
    () => field.uploadFile(file),
    () => document.body.innerText.includes('Nothing is changed yet.'),
  );
  const bringing = await longWork(
    'bringing it in',
    page,
    () => click(page, 'Join it with what is here'),
    () => document.body.innerText.includes('Done.'),
  );
  return [...reading, ...bringing];
}

/** The file itself is not saved: only how large it would be is told. */
async function writtenOut(page: Page): Promise<Figure[]> {
  await page.evaluate(() => {
    URL.createObjectURL = (file) => {
      Object.assign(globalThis, { written: (file as Blob).size });
      return 'about:blank#';
    };
    HTMLAnchorElement.prototype.click = () => undefined;
  });
  const figures = await longWork(
    'writing the backup',
    page,
    () => click(page, 'Write a backup file'),
    () => 'written' in globalThis,
  );
  const size = await page.evaluate(() => (globalThis as unknown as { written: number }).written);
  return [...figures, shown('the backup, MB', size / 1e6)];
}

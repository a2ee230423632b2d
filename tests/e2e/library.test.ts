// Contract of kit and logbook in a real Chromium: the address bar answers, every screen is without accessibility faults at
// the narrowest width, the card prints, and nothing acknowledged is lost when the browser is killed or a database is gone.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page, WebWorker } from 'puppeteer-core';
import { describe, expect, onTestFinished, test } from 'vitest';
import { libraryWith, sweepRecord, T0 } from '../logbook/libraryWith.ts';
import { accessibilityFaults } from './axe.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { picture, pictureFile, wear } from './screens.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

const library = libraryWith({
  records: [sweepRecord('r1', T0, 2, 9), sweepRecord('r2', T0 + 40 * 86_400_000, 4, 10)],
  entries: [{ id: 'e1', value: 5, record: 'r1' }],
});
const stored = {
  version: 2,
  kit: library.kit,
  'entry:e1': library.entries[0],
  ...Object.fromEntries(library.records.map((record) => [`record:${record.id}`, record])),
};

const put = (worker: WebWorker, entries: object) => worker.evaluate((all) => chrome.storage.local.set(all as Record<string, unknown>), entries);
const kept = (worker: WebWorker) => worker.evaluate(() => chrome.storage.local.get(null));
const click = (page: Page, name: string) => page.locator(`::-p-aria(${name})`).click();

async function started(): Promise<Chromium> {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  await put(chromium.worker, stored);
  return chromium;
}

test('the address bar answers with the last value as one types, in words that markup cannot break', async () => {
  const { worker } = await started();
  await put(worker, { kit: { ...library.kit, lenses: library.kit.lenses.map((lens) => ({ ...lens, name: 'Orrin 85 <b>&' })) } });
  const answers = await worker.evaluate(
    () =>
      new Promise<string[]>((done) => {
        let first = '';
        chrome.omnibox.setDefaultSuggestion = ({ description }) => {
          first = description;
          return Promise.resolve();
        };
        const typed = chrome.omnibox.onInputChanged as unknown as { dispatch(text: string, suggest: (more: { description: string }[]) => void): void };
        typed.dispatch('85', (more) => done([first, ...more.map(({ description }) => description)]));
      }),
  );
  expect(answers).toEqual(['+5  Orrin 85 &lt;b&gt;&amp; · Velde M1 · 85 mm · 4.25 m']);
});

test('the toolbar button is marked while a sweep is under way', async () => {
  const chromium = await started();
  const badge = () => chromium.worker.evaluate(() => chrome.action.getBadgeText({}));
  const page = await chromium.openTab();
  await page.waitForSelector('h1');
  await click(page, 'Practise');
  await page.waitForSelector('[data-phase="dialling"]');
  await expect.poll(badge).toBe('…');
  await page.keyboard.press('x');
  await click(page, 'New sweep');
  await expect.poll(badge).toBe('');
});

test('at 240 px the logbook, a situation, the kit, its forms and the files have no accessibility fault and fit', async () => {
  const chromium = await started();
  const page = await chromium.openTab('panel.html', { width: 240, height: 480 });
  const found: string[] = [];
  const look = async (name: string): Promise<void> => {
    for (const theme of ['dark', 'light'] as const) {
      await wear(page, theme);
      await picture(page, `library-${name}-${theme}`);
      found.push(...(await accessibilityFaults(page)).map((fault) => `${name}: ${fault}`));
    }
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (wide > 0) found.push(`${name} is ${wide} px too wide`);
  };
  const open = async (button: string, screen: string): Promise<void> => {
    await click(page, button);
    await page.waitForFunction((wanted) => document.querySelector(`[data-screen="${wanted}"] h1`) !== null, {}, screen);
    await look(screen);
  };
  await page.waitForSelector('h1');
  await open('Logbook', 'logbook');
  await click(page, 'Backup and tables');
  await page.waitForSelector('[data-screen="files"] h2');
  await look('files');
  await click(page, 'Back');
  await page.waitForSelector('.entries button');
  await page.locator('.entries button').click();
  await page.waitForSelector('[data-screen="situation"] .chart svg');
  await page.evaluate(() => document.querySelectorAll('details').forEach((one) => (one.open = true)));
  await look('situation');
  await click(page, 'Back');
  await click(page, 'Back');
  await open('Kit', 'kit');
  await open('Velde M1', 'body');
  await click(page, 'Back');
  await open('Add a lens', 'lens');
  await click(page, 'Back');
  await open('Add a converter', 'converter');
  expect(found).toEqual([]);
});

test('the card of a body prints its values on paper', async () => {
  const chromium = await started();
  const page = await chromium.openTab('card.html#b', { width: 500, height: 700 });
  await page.waitForSelector('table');
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(await page.evaluate(() => document.body.textContent)).toMatch(/Velde M1.*Orrin 85.*\+5.*entered/s);
  const file = pictureFile('card').replace(/png$/, 'pdf');
  await page.pdf({ path: file, preferCSSPageSize: true });
  // A6 is 105 by 148 mm: 298 by 420 points.
  const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(readFileSync(file, 'latin1')) ?? [];
  expect([Number(width), Number(height)].map((points) => Math.round(points / 10) * 10)).toEqual([300, 420]);
});

const bySide = (page: Page, text: string) => page.waitForFunction((wanted) => document.querySelector('main')?.textContent?.includes(wanted), {}, text);

describe('faults', () => {
  test('the copies wiped between two runs: nothing is lost, and a new copy is made', async () => {
    const profile = temporaryFolder();
    onTestFinished(() => removeFolder(profile));
    const first = await launchChromium({ profile });
    await put(first.worker, stored);
    const before = await first.openTab();
    await before.waitForSelector('h1');
    await first.close();
    removeFolder(join(profile, 'Default', 'IndexedDB'));
    const second = await launchChromium({ profile });
    onTestFinished(second.close);
    const page = await second.openTab();
    await click(page, 'Logbook');
    await bySide(page, 'Orrin 85');
    expect(await kept(second.worker)).toMatchObject(JSON.parse(JSON.stringify(stored)));
    await click(page, 'Backup and tables');
    await bySide(page, 'Bring back ');
  });

  test('the store wiped with copies left: the person is told in one sentence, and one press brings everything back', async () => {
    const chromium = await started();
    const first = await chromium.openTab();
    await first.waitForSelector('h1');
    await expect
      .poll(() => first.evaluate(async () => (await indexedDB.databases()).some(({ name }) => name === 'sweepbook')))
      .toBe(true);
    await new Promise((go) => setTimeout(go, 500));
    await first.close();
    await chromium.worker.evaluate(() => chrome.storage.local.clear());
    const page = await chromium.openTab();
    await bySide(page, 'Nothing is stored here any more, but there is a copy of everything');
    await click(page, 'Bring it back');
    await expect.poll(async () => Object.keys(await kept(chromium.worker))).toContain('record:r2');
    expect(await kept(chromium.worker)).toMatchObject(JSON.parse(JSON.stringify(stored)));
  });

  test('killed 20 times during an import: each time all of it is there or nothing of it, and all that was there before', async () => {
    const profile = temporaryFolder();
    onTestFinished(() => removeFolder(profile));
    const many = Array.from({ length: 200 }, (_, index) => sweepRecord(`new-${index}`, T0 + index, 1, 5));
    const backup = JSON.stringify({ sweepbook: 'backup', made: T0, library: { ...library, records: many } });
    const whole: number[] = [];
    for (let time = 0; time < 20; time++) {
      const chromium = await launchChromium({ profile });
      await chromium.worker.evaluate(() => chrome.storage.local.clear());
      await put(chromium.worker, stored);
      const page = await chromium.openTab();
      await click(page, 'Logbook');
      await click(page, 'Backup and tables');
      const input = await page.waitForSelector('input[accept*="json"]');
      await input?.evaluate((element, text) => {
        const files = new DataTransfer();
        files.items.add(new File([text], 'backup.json'));
        (element as HTMLInputElement).files = files.files;
        element.dispatchEvent(new Event('change', { bubbles: true }));
      }, backup);
      const join = await page.waitForSelector('::-p-aria(Join it with what is here)');
      void join?.click().catch(() => undefined);
      await new Promise((go) => setTimeout(go, time * 12));
      await chromium.kill();
      const again = await launchChromium({ profile });
      const found = await kept(again.worker);
      await again.close();
      expect(found).toMatchObject(JSON.parse(JSON.stringify({ 'record:r1': stored['record:r1' as keyof typeof stored], 'entry:e1': stored['entry:e1'] })));
      whole.push(Object.keys(found).filter((key) => key.startsWith('record:new-')).length);
    }
    expect(whole.filter((count) => count !== 0 && count !== 200)).toEqual([]);
    console.log(`killed during an import: ${whole.filter((count) => count === 200).length} of 20 were already whole, the others untouched`);
  });

  test('killed 20 times during a migration: everything stored by version 1 is there in the end', async () => {
    const version1: Record<string, unknown> = JSON.parse(readFileSync(join('tests', 'fixtures', 'store-1.json'), 'utf8'));
    const profile = temporaryFolder();
    onTestFinished(() => removeFolder(profile));
    const records = Object.keys(version1).filter((key) => key.startsWith('record:'));
    for (let time = 0; time < 20; time++) {
      const chromium = await launchChromium({ profile });
      await chromium.worker.evaluate(() => chrome.storage.local.clear());
      await put(chromium.worker, version1);
      void chromium.openTab().catch(() => undefined);
      await new Promise((go) => setTimeout(go, 20 + time * 15));
      await chromium.kill();
      const again = await launchChromium({ profile });
      const page = await again.openTab();
      await page.waitForSelector('h1');
      await expect.poll(async () => (await kept(again.worker))['version']).toBe(2);
      const found = await kept(again.worker);
      expect(Object.keys(found)).toEqual(expect.arrayContaining(records));
      for (const key of records) expect(found[key]).toEqual(version1[key]);
      await again.close();
    }
  });
});

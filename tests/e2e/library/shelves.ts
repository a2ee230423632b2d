// A small logbook in a real Chromium: what is stored, and the few moves every test of it makes.
import type { Page, WebWorker } from 'puppeteer-core';
import { onTestFinished } from 'vitest';
import { libraryWith, sweepRecord, T0 } from '../../logbook/libraryWith.ts';
import { launchChromium, type Chromium, type ChromiumOptions } from '../chromium.ts';

export const library = libraryWith({
  records: [sweepRecord('r1', T0, 2, 9), sweepRecord('r2', T0 + 40 * 86_400_000, 4, 10)],
  entries: [{ id: 'e1', value: 5, record: 'r1' }],
});

export const stored: Readonly<Record<string, unknown>> = {
  version: 3,
  kit: library.kit,
  'entry:e1': library.entries[0],
  ...Object.fromEntries(library.records.map((record) => [`record:${record.id}`, record])),
};

/** The same as it comes back from the store. */
export const storedAgain = JSON.parse(JSON.stringify(stored)) as Record<string, unknown>;

export const put = (worker: WebWorker, entries: object): Promise<void> =>
  worker.evaluate((all) => chrome.storage.local.set(all as Record<string, unknown>), entries);
export const kept = (worker: WebWorker): Promise<Record<string, unknown>> => worker.evaluate(() => chrome.storage.local.get(null));
export const click = (page: Page, name: string): Promise<void> => page.locator(`::-p-aria(${name})`).click();

/** Waits until the panel says this. */
export const says = async (page: Page, text: string): Promise<void> =>
  void (await page.waitForFunction(
    (wanted) =>
      document
        .querySelector('main')
        ?.textContent?.replaceAll(/[\u00a0\u202f]/gu, ' ')
        .includes(wanted),
    {},
    text,
  ));

export async function started(options: ChromiumOptions = {}): Promise<Chromium> {
  const chromium = await launchChromium(options);
  onTestFinished(chromium.close);
  await put(chromium.worker, stored);
  return chromium;
}

/** Gives the panel a file, as if it was chosen in the field that takes files of this kind. */
export async function giveFile(page: Page, kind: string, name: string, bytes: string | Uint8Array): Promise<void> {
  const input = await page.waitForSelector(`input[type="file"][accept*="${kind}"]`);
  const base64 = Buffer.from(bytes).toString('base64');
  await input?.evaluate(
    (element, content, called) => {
      const files = new DataTransfer();
      files.items.add(new File([Uint8Array.from(atob(content), (sign) => sign.charCodeAt(0))], called));
      (element as HTMLInputElement).files = files.files;
      element.dispatchEvent(new Event('change', { bubbles: true }));
    },
    base64,
    name,
  );
}

// A storage that is really full: the extension as it was built, but with the browser's usual ceiling on what it may store.
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { WebWorker } from 'puppeteer-core';
import { onTestFinished } from 'vitest';
import { temporaryFolder, removeFolder } from './temporary.ts';

/** The folder of that extension, for as long as the test runs. */
export function withCeiling(): string {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  cpSync('dist/chromium', folder, { recursive: true });
  const path = join(folder, 'manifest.json');
  const manifest = JSON.parse(readFileSync(path, 'utf8')) as { permissions: string[] };
  const permissions = manifest.permissions.filter((permission) => permission !== 'unlimitedStorage');
  writeFileSync(path, JSON.stringify({ ...manifest, permissions }));
  return folder;
}

/** Leaves room for so many bytes; `filler` is the key to remove when there is to be room again. */
export const fillUp = (worker: WebWorker, left: number): Promise<void> =>
  worker.evaluate(async (bytes) => {
    const room = chrome.storage.local.QUOTA_BYTES - (await chrome.storage.local.getBytesInUse());
    await chrome.storage.local.set({ filler: 'x'.repeat(room - 'filler""'.length - bytes) });
  }, left);

// Looks at a page as a person would: at a width, in a theme, as a picture.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';

export type Theme = 'dark' | 'light';

const folder = 'dist/screenshots';

export async function wear(page: Page, theme: Theme): Promise<void> {
  await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: theme }]);
}

/** Saves the whole page as dist/screenshots/NAME.png and returns that path. */
export async function picture(page: Page, name: string): Promise<string> {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${name}.png`) as `${string}.png`;
  await page.screenshot({ path, fullPage: true });
  return path;
}

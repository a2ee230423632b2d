// Looks at a page as a person would: in a theme, as a picture.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';

export type Theme = 'dark' | 'light';

const folder = 'dist/screenshots';

export async function wear(page: Page, theme: Theme): Promise<void> {
  await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: theme }]);
}

/** The path of a picture's file, in a folder that exists. */
export function pictureFile(name: string): `${string}.png` {
  mkdirSync(folder, { recursive: true });
  return `${join(folder, name)}.png`;
}

/** Saves the whole page as dist/screenshots/NAME.png and returns that path. */
export async function picture(page: Page, name: string): Promise<string> {
  const path = pictureFile(name);
  await page.screenshot({ path, fullPage: true });
  return path;
}

/** Opens a room of the screen, counted from 0; others that share its name close. False where there is none. */
export const openRoom = (page: Page, room: number): Promise<boolean> =>
  page.$$eval(
    '.rooms > details',
    (all, at) => {
      const wanted = all[at];
      if (wanted) wanted.open = true;
      return wanted !== undefined;
    },
    room,
  );

// Looks at a page as a person would: in a theme, as a picture.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { CDPSession, Page } from 'puppeteer-core';

/** `forced`: a person's own colours, as the system has them. */
export type Theme = 'dark' | 'light' | 'dim' | 'red' | 'forced';

const folder = 'dist/screenshots';

/** Dark and light as the system's, dim and red as they are chosen in the panel. */
export async function wear(page: Page, theme: Theme): Promise<void> {
  const features = [
    { name: 'prefers-color-scheme', value: theme === 'light' ? 'light' : 'dark' },
    { name: 'forced-colors', value: theme === 'forced' ? 'active' : 'none' },
  ];
  await (await sessionOf(page)).send('Emulation.setEmulatedMedia', { features });
  await page.evaluate(
    (chosen) => {
      if (chosen) document.documentElement.dataset['theme'] = chosen;
      else delete document.documentElement.dataset['theme'];
    },
    theme === 'dim' || theme === 'red' ? theme : null,
  );
}

const sessions = new WeakMap<Page, Promise<CDPSession>>();

function sessionOf(page: Page): Promise<CDPSession> {
  const session = sessions.get(page) ?? page.createCDPSession();
  sessions.set(page, session);
  return session;
}

/** The path of a picture's file, in a folder that exists. */
export function pictureFile(name: string): `${string}.png` {
  mkdirSync(folder, { recursive: true });
  return `${join(folder, name)}.png`;
}

/** Saves the whole page as dist/screenshots/NAME.png and returns it. */
export const picture = (page: Page, name: string): Promise<Uint8Array> => page.screenshot({ path: pictureFile(name), fullPage: true, optimizeForSpeed: true });

/** Pictures for people to look at are kept where they were asked for (`npm run pictures`): taking them is most of what a tour costs. */
const ARE_KEPT = process.env['KEEP_PICTURES'] !== undefined;

/** Keeps such a picture. */
export async function keep(page: Page, name: string): Promise<void> {
  if (ARE_KEPT) await picture(page, name);
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

/** What stands on it, with plain blanks. */
export const shownOn = (page: Page): Promise<string> =>
  page.evaluate(() => (document.querySelector('main')?.textContent ?? '').replaceAll(/[\u00a0\u202f]/gu, ' '));

// Starts a stock Firefox with the built add-on in it, and opens its real sidebar.
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import puppeteer, { TimeoutError, type Browser, type Page } from 'puppeteer-core';
import { firefoxAddOnId } from '../../manifest/firefox.ts';
import { program } from '../programs/programs.ts';
import { openSidebar, type Sidebar } from './firefox-sidebar.ts';
import { connectionOf } from './firefox-window.ts';
import { cutPower } from './power-cut.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

export type FirefoxOptions = {
  /** A package to install, where it is not the folder that was built. */
  package?: string;
  /** A profile folder to keep, for tests that kill the browser and start it again; otherwise a throw-away one. */
  profile?: string;
  prefs?: Readonly<Record<string, string | number | boolean>>;
  /** More of the environment, such as where sound comes from. */
  env?: Readonly<Record<string, string>>;
  /** A window on the screen. */
  headful?: boolean;
};

export type Firefox = {
  browser: Browser;
  /** Clicks the toolbar button and waits for the real sidebar. It is about 250 px wide. */
  openSidebar: () => Promise<Sidebar>;
  /** Opens a page of the add-on in a tab, at the sidebar's width if no other is given, and waits for `selector` in it. */
  openTab: (selector: string, path?: string, size?: { width: number; height: number }) => Promise<Page>;
  /** Ends the browser as a power cut would. */
  kill: () => Promise<void>;
  close: () => Promise<void>;
};

/** Fixed, so that the add-on's pages have an address that is known beforehand. */
const address = '6f1b6a5e-5e0c-4a36-9d5b-5f3e0a7c2d41';

const prefs = {
  // Of a country that measures in metres.
  'intl.accept_languages': 'en-GB',
  'extensions.webextensions.uuids': JSON.stringify({ [firefoxAddOnId]: address }),
  // An add-on from a folder is forgotten at every restart; its storage must not be.
  'extensions.webextensions.keepStorageOnUninstall': true,
  'extensions.webextensions.keepUuidOnUninstall': true,
};

export async function launchFirefox(options: FirefoxOptions = {}): Promise<Firefox> {
  const profile = options.profile ?? temporaryFolder();
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: program('firefox'),
    headless: !options.headful,
    userDataDir: profile,
    env: { ...process.env, ...options.env },
    args: ['--remote-allow-system-access'],
    extraPrefsFirefox: { ...prefs, ...options.prefs },
    defaultViewport: null,
  });
  if (options.package === undefined) await browser.installExtension(resolve('dist/firefox'));
  else await connectionOf(browser).send('webExtension.install', { extensionData: { type: 'archivePath', path: resolve(options.package) } });

  const clear = (): void => {
    if (options.profile === undefined) removeFolder(profile);
  };
  return {
    browser,
    openSidebar: () => openSidebar(browser),
    openTab: async (selector, path = 'panel.html', size = { width: 250, height: 700 }) => {
      const page = await browser.newPage();
      await page.setViewport(size);
      // Going to an add-on's page never resolves: wait for what it shows.
      page.goto(`moz-extension://${address}/${path}`, { timeout: 0 }).catch(() => undefined);
      await untilShown(page, selector);
      return page;
    },
    kill: async () => {
      await cutPower(browser);
      await preferencesPutBack(profile);
      clear();
    },
    close: async () => {
      await browser.close();
      clear();
    },
  };
}

/** While the add-on's page takes the place of the empty one, the driver may find no page to look at: it looks again. */
async function untilShown(page: Page, selector: string): Promise<void> {
  for (let looks = 1; ; looks += 1) {
    try {
      await page.waitForSelector(selector);
      return;
    } catch (fault) {
      if (fault instanceof TimeoutError || looks === 10) throw fault;
    }
  }
}

/** The driver puts back the preferences that it found, a moment after the end: a start before that would find half of them. */
async function preferencesPutBack(profile: string): Promise<void> {
  const isPutBack = (): boolean => ['prefs.js', 'user.js'].every((file) => !existsSync(join(profile, `${file}.puppeteer`)));
  for (let tries = 0; tries < 100 && !isPutBack(); tries += 1) await new Promise((go) => setTimeout(go, 30));
}

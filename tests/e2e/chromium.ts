// Starts a stock Chromium with the built extension in it, and opens its real side panel.
import { resolve } from 'node:path';
import puppeteer, { type Browser, type Page, type Target, type WebWorker } from 'puppeteer-core';
import { program } from '../programs/programs.ts';
import { cutPower } from './power-cut.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

export type ChromiumOptions = {
  /** The folder of the extension, where it is not the one that was built. */
  extension?: string;
  /** A profile folder to keep, for tests that kill the browser and start it again; otherwise a throw-away one. */
  profile?: string;
  /** More command line arguments, such as those of a fake microphone. */
  args?: readonly string[];
  /** More of the environment, such as where sound comes from. */
  env?: Readonly<Record<string, string>>;
  /** Sound on: the driver mutes it by default. */
  audible?: boolean;
  /** Timers slowed in hidden windows as for a person: the driver switches that off by default. */
  throttled?: boolean;
  /** A window on the screen. */
  headful?: boolean;
};

export type Chromium = {
  browser: Browser;
  worker: WebWorker;
  extensionId: string;
  /** Clicks the toolbar button, when by this machine's clock, and what that opened, however far it is. */
  clickToolbar: () => Promise<{ panel: Page; clicked: number }>;
  /** Opens the real side panel by the toolbar button. It is about 360 px wide. */
  openPanel: () => Promise<Page>;
  /** Opens a page of the extension in a tab: at any size, and where a permission prompt can be shown. */
  openTab: (path?: string, size?: { width: number; height: number }) => Promise<Page>;
  /** Ends the browser as a power cut would. */
  kill: () => Promise<void>;
  close: () => Promise<void>;
};

/** Chromium refuses to start its sandbox for root, who runs the tests in a container. */
const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];

/** Nothing that calls home. */
const quiet = ['--disable-gpu', '--disable-quic', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--no-first-run'];

/** Of a country that measures in metres. */
const metric = ['--accept-lang=en-GB'];

const muting = ['--mute-audio'];
const unthrottling = ['--disable-background-timer-throttling', '--disable-backgrounding-occluded-windows', '--disable-renderer-backgrounding'];

export async function launchChromium(options: ChromiumOptions = {}): Promise<Chromium> {
  const profile = options.profile ?? temporaryFolder();
  const browser = await puppeteer.launch({
    executablePath: program('chromium'),
    headless: !options.headful,
    pipe: true,
    enableExtensions: [resolve(options.extension ?? 'dist/chromium')],
    userDataDir: profile,
    env: { ...process.env, ...options.env },
    args: [...sandbox, ...quiet, ...metric, ...(options.args ?? [])],
    ignoreDefaultArgs: [...(options.audible ? muting : []), ...(options.throttled ? unthrottling : [])],
    defaultViewport: null,
  });
  // What a first install opens would stand in the way.
  closeWelcome(browser);
  const target = await browser.waitForTarget(isOurWorker, { timeout: 15_000 });
  const worker = await target.worker();
  if (worker === null) throw new Error('The extension started no service worker.');
  const extensionId = new URL(target.url()).host;
  // The background says it once, at its start: before that the toolbar button opens nothing. Even the extension's own
  // API may not be there yet.
  const opens = (): Promise<boolean> =>
    worker.evaluate(async () => typeof chrome !== 'undefined' && (await chrome.sidePanel.getPanelBehavior()).openPanelOnActionClick === true);
  while (!(await opens())) await new Promise((go) => setTimeout(go, 20));

  const clear = (): void => {
    if (options.profile === undefined) removeFolder(profile);
  };
  return {
    browser,
    worker,
    extensionId,
    clickToolbar: () => clickToolbar(browser, extensionId),
    openPanel: () => openPanel(browser, extensionId),
    openTab: async (path = 'panel.html', size = { width: 360, height: 700 }) => {
      const page = await browser.newPage();
      await page.setViewport(size);
      await page.goto(`chrome-extension://${extensionId}/${path}`);
      return page;
    },
    kill: async () => {
      await cutPower(browser);
      clear();
    },
    close: async () => {
      await browser.close();
      clear();
    },
  };
}

function isOurWorker(target: Target): boolean {
  return target.type() === 'service_worker' && target.url().startsWith('chrome-extension://');
}

/** The first such page: a test may open it again to look at it. */
function closeWelcome(browser: Browser): void {
  let closed = false;
  const close = async (target: Target): Promise<void> => {
    if (closed || target.type() !== 'page' || !target.url().endsWith('/welcome.html')) return;
    closed = true;
    await target
      .page()
      .then((page) => page?.close())
      .catch(() => undefined);
  };
  for (const event of ['targetcreated', 'targetchanged'] as const) browser.on(event, (target) => void close(target));
  for (const target of browser.targets()) void close(target);
}

async function clickToolbar(browser: Browser, extensionId: string): Promise<{ panel: Page; clicked: number }> {
  const [web] = await browser.pages();
  const extension = (await browser.extensions()).get(extensionId);
  if (web === undefined || extension === undefined) throw new Error('There is no tab to open the panel from.');
  await web.bringToFront();
  const before = new Set(browser.targets());
  const clicked = performance.timeOrigin + performance.now();
  await web.triggerExtensionAction(extension);
  const target = await browser.waitForTarget((one) => !before.has(one) && one.url().endsWith('/panel.html'), {
    timeout: 10_000,
  });
  return { panel: await target.asPage(), clicked };
}

async function openPanel(browser: Browser, extensionId: string): Promise<Page> {
  const { panel } = await clickToolbar(browser, extensionId);
  // The panel slides in: until it has its width it cannot be clicked.
  await panel.waitForFunction(() => innerWidth >= 300 && document.readyState === 'complete');
  return panel;
}

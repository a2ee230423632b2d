// Ends a browser, and every process it started, as a power cut would: nothing gets the chance to save.
import { once } from 'node:events';
import type { Browser } from 'puppeteer-core';

export async function cutPower(browser: Browser): Promise<void> {
  const main = browser.process();
  if (main?.pid === undefined) throw new Error('The browser is not ours to kill.');
  const ended = once(main, 'exit');
  process.kill(-main.pid, 'SIGKILL');
  await ended;
}

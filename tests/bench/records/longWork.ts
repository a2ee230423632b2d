// Something long in the panel: how long it takes, what it tells of how far it is, and how soon a key is answered meanwhile.
import type { Page } from 'puppeteer-core';
import { shown, least, type Figure } from '../figure.ts';

/** Milliseconds that it may take at most, and from one key to the next. */
const PATIENCE = 400_000;
const APART = 50;
/** Different shares that it must tell at least. */
const TOLD = 10;

interface Watched {
  readonly waits: number[];
  readonly told: string[];
}

/** `isOver`: runs in the page. */
export async function longWork(name: string, page: Page, begin: () => Promise<unknown>, isOver: () => boolean): Promise<Figure[]> {
  await page.evaluate(watch);
  const began = performance.now();
  await begin();
  while (!(await page.evaluate(isOver))) {
    if (performance.now() - began > PATIENCE) throw new Error(`${name}: never over. The panel shows: ${await page.evaluate(() => document.body.innerText)}`);
    await page.keyboard.press('Shift');
    await new Promise((go) => setTimeout(go, APART));
  }
  const took = performance.now() - began;
  const { waits, told } = await page.evaluate(() => (globalThis as unknown as { watched: Watched }).watched);
  const sorted = waits.toSorted((a, b) => a - b);
  return [
    shown(`${name}, s`, took / 1000),
    least(`${name}: different shares told`, new Set(told).size, TOLD),
    shown(`${name}: the middlemost key answered after, ms`, sorted[sorted.length >> 1] ?? Infinity),
    shown(`${name}: 95 of 100 keys answered within, ms`, sorted[Math.floor(sorted.length * 0.95)] ?? Infinity),
    shown(`${name}: the slowest key answered after, ms`, sorted.at(-1) ?? Infinity),
  ];
}

/** Runs in the page. */
function watch(): void {
  const watched: Watched = { waits: [], told: [] };
  const isWatched = 'watched' in globalThis;
  Object.assign(globalThis, { watched });
  if (isWatched) return;
  const now = (): Watched => (globalThis as unknown as { watched: Watched }).watched;
  document.addEventListener('keydown', ({ timeStamp }) => requestAnimationFrame(() => now().waits.push(performance.now() - timeStamp)));
  const main = document.querySelector('main');
  const look = (): void => {
    const said = main?.querySelector('label:has(+ progress)')?.textContent;
    if (said) now().told.push(said);
  };
  if (main) new MutationObserver(look).observe(main, { subtree: true, childList: true, characterData: true });
}

// A screen measured as it opens: how high it is, and how far down the first thing stands that can be pressed or filled in.
import type { Page } from 'puppeteer-core';
import { keep } from '../screens.ts';
import { boundOf, FIRST_PRESS } from './bounds.ts';

/** Of the narrow side panel, in a low window. */
const WINDOW = { width: 360, height: 640 };

export interface Measured {
  readonly screen: string;
  readonly height: number;
  /** The first button, link or field that is enabled and belongs to what the screen is for; null where it has none. */
  readonly first: { readonly called: string; readonly lowerEdge: number } | null;
}

/** A picture of the screen is kept where it was asked for. */
export async function measured(page: Page, screen: string): Promise<Measured> {
  await page.setViewport(WINDOW);
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
  await keep(page, `height-${screen}`);
  return sizeOf(page, screen);
}

/** As the window is now. */
export const sizeOf = (page: Page, screen: string): Promise<Measured> =>
  page.evaluate((name) => {
    /** The head of a screen leads elsewhere, and a notice tells of something else. */
    const shown = (what: string): HTMLElement | undefined =>
      [...document.querySelectorAll<HTMLElement>(what)].find(
        (one) =>
          one.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
          !one.matches(':disabled, [aria-disabled="true"]') &&
          !one.closest('header, nav, .trouble, .voicemark'),
      );
    // What only unfolds a part of the screen counts where there is nothing else.
    const first = shown('button, a[href], input, select, textarea, [role="button"]') ?? shown('summary');
    const label = first instanceof HTMLInputElement || first instanceof HTMLSelectElement ? first.labels?.[0]?.textContent : first?.textContent;
    return {
      screen: name,
      height: document.documentElement.scrollHeight,
      first: first
        ? {
            called: (first.getAttribute('aria-label') ?? label ?? '').trim().slice(0, 40),
            lowerEdge: Math.round(first.getBoundingClientRect().bottom + scrollY),
          }
        : null,
    };
  }, screen);

/** One line a screen that misses its bound, which may be so many times as high. */
export function misses({ screen, height, first }: Measured, higher = 1): string[] {
  const bound = boundOf(screen) * higher;
  return [
    ...(height > bound ? [`${screen} is ${height} px high, more than ${bound}`] : []),
    ...(first && first.lowerEdge > FIRST_PRESS ? [`${screen}: “${first.called}” ends at ${first.lowerEdge} px, below ${FIRST_PRESS}`] : []),
  ];
}

export const tableOf = (all: readonly Measured[]): string =>
  all
    .map(
      ({ screen, height, first }) =>
        `${screen.padEnd(26)}${String(height).padStart(6)} px   ${first ? `${first.lowerEdge} px: ${first.called}` : 'nothing to press'}`,
    )
    .join('\n');

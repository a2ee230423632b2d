// A panel as a person sits before it, the same in either browser: what it shows, and the keys, the pointer and the one
// switch to act on it.
import type { KeyInput, Page } from 'puppeteer-core';
import type { Sidebar } from './firefox-sidebar.ts';

/** What can be read off the screen at one moment. */
export interface Look {
  readonly screen: string | null;
  readonly phase: string | null;
  /** The value to set, while there is one. */
  readonly value: number | null;
  /** The value that came out, once the sweep is finished. */
  readonly found: number | null;
  readonly announcement: string;
  readonly lastHeard: string;
  readonly holds: readonly string[];
  /** Everything in the panel, as text. */
  readonly text: string;
}

export interface Seat {
  evaluate: Sidebar['evaluate'];
  down: (key: string) => Promise<void>;
  up: (key: string) => Promise<void>;
  /** A trusted click in the middle of the element. */
  click: (selector: string) => Promise<void>;
}

export const seatAt = (page: Page): Seat => ({
  evaluate: (fn, ...args) => page.evaluate(fn as (...all: unknown[]) => never, ...args),
  down: (key) => page.keyboard.down(key as KeyInput),
  up: (key) => page.keyboard.up(key as KeyInput),
  click: (selector) => page.locator(selector).click(),
});

export const seatAtSidebar = ({ evaluate, keyDown, keyUp, click }: Sidebar): Seat => ({
  evaluate,
  down: keyDown,
  up: keyUp,
  click,
});

export async function press(seat: Seat, key: string): Promise<void> {
  await seat.down(key);
  await seat.up(key);
}

export const look = (seat: Seat): Promise<Look> =>
  seat.evaluate(() => {
    /** As it is read: whatever blank stands between two words. */
    const read = (element: Element | null): string => (element?.textContent ?? '').replaceAll(/[\u00a0\u202f]/gu, ' ');
    const text = (selector: string): string => read(document.querySelector(selector)).trim();
    const number = (label: string): number | null => {
      const written = text(`[aria-label="${label}"]`).replace('\u2212', '-');
      return written === '' ? null : Number(written);
    };
    const main = document.querySelector('main');
    return {
      screen: main?.dataset['screen'] ?? null,
      phase: main?.dataset['phase'] ?? null,
      value: number('Value to set'),
      found: number('Value to enter'),
      announcement: text('[aria-label="Announcement"]'),
      lastHeard: text('[aria-label="Last heard"] p'),
      holds: Array.from(document.querySelectorAll('[aria-label="Holds so far"] li'), read),
      text: read(main),
    };
  });

const PATIENCE = 30_000;

/** Looks until it is so, and returns what was seen then. */
export async function until(seat: Seat, what: string, isSo: (seen: Look) => boolean, patience = PATIENCE): Promise<Look> {
  const deadline = performance.now() + patience;
  for (;;) {
    const seen = await look(seat);
    if (isSo(seen)) return seen;
    if (performance.now() > deadline) throw new Error(`Never came: ${what}. The panel shows ${JSON.stringify(seen)}`);
    await new Promise((go) => setTimeout(go, 25));
  }
}

export const untilPhase = (seat: Seat, ...phases: readonly string[]): Promise<Look> =>
  until(seat, phases.join(' or '), ({ phase }) => phase !== null && phases.includes(phase));

/** Until the microphone mark says this: a state, or why the ear is deaf. */
export async function untilMark(seat: Seat, state: string): Promise<void> {
  const deadline = performance.now() + PATIENCE;
  for (;;) {
    const { voice, deaf } = await seat.evaluate(() => ({ ...document.querySelector<HTMLElement>('[data-voice]')?.dataset }));
    if (voice === state || deaf === state) return;
    if (performance.now() > deadline) throw new Error(`The mark never says “${state}”, but ${voice} ${deaf}. ${JSON.stringify(await look(seat))}`);
    await new Promise((go) => setTimeout(go, 25));
  }
}

export const untilText = (seat: Seat, part: string): Promise<Look> => until(seat, `“${part}”`, ({ text }) => text.includes(part));

/** Moves the focus with Tab until it is on the control of this name, as a person without a pointer does. */
export async function tabTo(seat: Seat, name: string): Promise<void> {
  const passed: string[] = [];
  for (let steps = 0; steps < 60; steps += 1) {
    const focused = await seat.evaluate(() => {
      const element = document.activeElement;
      const named = element?.matches('summary') ? (element.querySelector('h2') ?? element) : element;
      const label = element instanceof HTMLInputElement ? element.labels?.[0]?.textContent : named?.textContent;
      return (element?.getAttribute('aria-label') ?? label ?? '').replaceAll(/[\u00a0\u202f]/gu, ' ').trim();
    });
    if (focused === name || focused.startsWith(`${name}: `)) return;
    passed.push(focused.slice(0, 40));
    await press(seat, 'Tab');
  }
  throw new Error(`Tab never leads to “${name}”, only to: ${[...new Set(passed)].join(' | ')}`);
}

export async function choose(seat: Seat, name: string): Promise<void> {
  await tabTo(seat, name);
  await press(seat, 'Enter');
}

export async function type(seat: Seat, text: string): Promise<void> {
  for (const letter of text) await press(seat, letter);
}

// The journal of the sweep under way as it lies on disk. An event is on the screen a moment before it is there, so a test waits for
// what it expects to find, and for what it means to find again before it ends a panel or a browser.
import { expect } from 'vitest';
import type { Journal, SweepEvent } from '../../src/sweep/event.ts';
import type { Chromium } from './chromium.ts';
import type { Seat } from './seat.ts';

export async function journalOf({ worker }: Chromium): Promise<Journal> {
  const { live } = await worker.evaluate(() => chrome.storage.local.get('live'));
  return (live ?? []) as Journal;
}

/** The same, read by the panel itself: Firefox lets nobody look but a page of the add-on. */
export const journalAt = ({ evaluate }: Seat): Promise<Journal> =>
  evaluate(async () => {
    const { storage } = (globalThis as unknown as { browser?: typeof chrome }).browser ?? chrome;
    const { live } = await storage.local.get('live');
    return (live ?? []) as Journal;
  });

/** What is kept of the bench with the sweep. */
export const benchIn = ([opened]: Journal) => (opened?.did === 'opened' ? opened.plan.bench : undefined);

/** How the sweep was judged: by what, and what the light did. */
export const verdictsOf = async (chromium: Chromium): Promise<string[]> =>
  (await journalOf(chromium)).flatMap((event) => (event.did === 'judged' ? [`${event.by} ${event.verdict.light}`] : []));

/** Waits until the journal ends so, and returns all of it. */
export async function untilEndsWith(chromium: Chromium, ...did: readonly SweepEvent['did'][]): Promise<Journal> {
  await expect.poll(async () => (await journalOf(chromium)).slice(-did.length).map((event) => event.did)).toEqual(did);
  return journalOf(chromium);
}

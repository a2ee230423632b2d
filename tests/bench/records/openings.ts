// Openings of the real side panel, one after another in one browser: when the start is drawn, and when all that is stored is there.
import type { Chromium } from '../../e2e/chromium.ts';
import { seenAt } from '../paint/opening.ts';

/** Milliseconds since the click; `whole` is not waited for by all of them. */
export interface Opened {
  readonly first: number;
  readonly whole: number | null;
}

/** So that what the last one left behind is over. */
const QUIET = 500;

/** `whole`: how many of them also wait until everything has been read. */
export async function openings(chromium: Chromium, times: number, whole = times): Promise<Opened[]> {
  const all: Opened[] = [];
  for (let time = 0; time < times; time++) {
    await new Promise((go) => setTimeout(go, QUIET));
    const { panel, clicked } = await chromium.clickToolbar();
    panel.setDefaultTimeout(0);
    const seen = await panel.evaluate(seenAt, time < whole);
    all.push({ first: seen.first - clicked, whole: seen.whole === null ? null : seen.whole - clicked });
    await panel.close();
  }
  return all;
}

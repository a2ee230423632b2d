// Whoever goes through the panel in the longer language and looks at every screen: in it, in its mirror image and in each of the other
// languages, at every width. Nothing may be cut, cross its frame or scroll sideways, and nothing may be left in the language before.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished } from 'vitest';
import { LANGUAGES } from '../../../src/language.ts';
import { launchChromium } from '../chromium.ts';
import { inPseudoLanguage } from '../pseudo/pseudoLanguage.ts';
import { untilStart, type Tour, type Way } from '../routes/tour.ts';
import { seatAt } from '../seat.ts';
import { removeFolder, temporaryFolder } from '../temporary.ts';
import { leftIn, sentencesOn } from './left.ts';
import { faultsAsWorn, faultsInLonger } from './looks.ts';
import { inLanguage, OTHERS, openedIn } from './worn.ts';

/** What was found wrong, each under what was asked. */
export interface Found {
  readonly seen: number;
  readonly languages: readonly string[];
  readonly longer: readonly string[];
  readonly mirrored: readonly string[];
}

export type Route = (tour: Tour) => Promise<void>;

interface Setting {
  /** What the person has kept. */
  readonly stored?: Readonly<Record<string, unknown>>;
  /** Of the browser, for as long as the test runs. */
  readonly args?: () => readonly string[];
}

/** The panel changes its language while it stands: one walk leads to each screen in all of them. */
export function tourOfPanel(route: Route, setting: Setting = {}): Promise<Found> {
  return tour(route, setting, true, async (page, name, found) => {
    const before = await sentencesOn(page);
    await lookInLonger(page, name, found);
    for (const language of OTHERS) {
      await inLanguage(page, language);
      found.languages.push(...(await faultsAsWorn(page, name, language)));
      found.languages.push(...leftIn(before, await sentencesOn(page)).map((one) => `${language}, ${name}: “${one}” is English`));
    }
    await inLanguage(page, LANGUAGES[0]);
  });
}

/** A page in a tab is opened anew in each language, and counts its sheets in English: so it is visited in the extension as it is, too. */
export async function tourOfPages(route: Route, setting: Setting = {}): Promise<Found> {
  const longer = await tour(route, setting, true, lookInLonger);
  const others = await tour(route, setting, false, async (page, name, found, again) => {
    const sheets = await sheetsOf(page);
    for (const language of OTHERS) {
      await openedIn(page, language);
      await again?.(page);
      found.languages.push(...(await faultsAsWorn(page, name, language)));
      if ((await sheetsOf(page)) !== sheets) found.languages.push(`${language}, ${name}: not ${sheets ?? 'no'} sheets, as in English`);
    }
  });
  return { ...longer, languages: others.languages };
}

type Finding = { [Asked in 'languages' | 'longer' | 'mirrored']: string[] };
type Looking = (page: Page, name: string, found: Finding, again?: Way) => Promise<void>;

async function tour(route: Route, { stored = {}, args }: Setting, inLonger: boolean, looking: Looking): Promise<Found> {
  const began = performance.now();
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const extension = inLonger ? { extension: await inPseudoLanguage(folder) } : {};
  const chromium = await launchChromium({ ...extension, args: [...(args?.() ?? [])] });
  onTestFinished(chromium.close);
  await chromium.worker.evaluate((all) => chrome.storage.local.set(all), stored as Record<string, unknown>);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  const found: Finding = { languages: [], longer: [], mirrored: [] };
  const under: Tour = { chromium, page, seat, seen: [], look: (tour, name, again) => looking(tour.page, name, found, again) };
  await route(under);
  const faults = Object.values(found).flat().length;
  console.log(`${under.seen.length} screens in ${Math.round((performance.now() - began) / 1000)} s, ${faults} faults: ${under.seen.join(', ')}`);
  return { seen: under.seen.length, ...found };
}

async function lookInLonger(page: Page, name: string, found: Finding): Promise<void> {
  expect(await page.evaluate(() => document.body.textContent), `${name} is in the language`).toMatch(/⟦/u);
  found.longer.push(...(await faultsInLonger(page, name, 'ltr')));
  found.mirrored.push(...(await faultsInLonger(page, name, 'rtl')));
}

/** How many it is printed on, where it is paper. */
async function sheetsOf(page: Page): Promise<number | null> {
  if ((await page.$('#panel, #check, #ask')) !== null) return null;
  const pdf = Buffer.from(await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  return pdf.split(/\/Type \/Page\b/).length - 1;
}

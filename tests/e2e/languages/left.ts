// What a screen still says in the language that it was in before.
import type { Page } from 'puppeteer-core';

/** Names that the person gave, and the headings of their table. */
const THEIRS = /Velde|Orrin|Corvid|Practice lens|\(mm\)/u;

/** Texts of several words, by which a language is known; what was said or answered before the language changed stays as it was. */
export const sentencesOn = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const found: string[] = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.textContent?.trim() ?? '';
      const element = node.parentElement;
      if (!/\p{L}{2,} \p{L}{2,}/u.test(text) || !element?.checkVisibility()) continue;
      if (!element.closest('.unseen, .heard, .fault, [role="alert"], [role="status"], output')) found.push(text);
    }
    return found;
  });

export const leftIn = (before: readonly string[], now: readonly string[]): string[] => now.filter((text) => before.includes(text) && !THEIRS.test(text));

// Values whose sign stands after their figures, as it does where a language that is written from right to left turns them round.
import type { Page } from 'puppeteer-core';

export const signsAfter = (page: Page, where: string): Promise<string[]> =>
  page.evaluate((name) => {
    const leftOf = (node: Node, from: number): number => {
      const range = document.createRange();
      range.setStart(node, from);
      range.setEnd(node, from + 1);
      return range.getBoundingClientRect().left;
    };
    const faults: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.textContent ?? '';
      if (!node.parentElement?.checkVisibility({ visibilityProperty: true }) || node.parentElement.closest('.unseen')) continue;
      for (const { index } of text.matchAll(/[−+](?=\d)/gu)) {
        if (leftOf(node, index) > leftOf(node, index + 1)) faults.push(`${name}: “${text.trim().slice(0, 40)}” has a sign after its figures`);
      }
    }
    return faults;
  }, where);

// What a page shows that does not fit: messages cut off, drawn over one another or over the edge of what frames them, squeezed to a letter
// or two a line, or wider than the page.
import type { Page } from 'puppeteer-core';

/** One line a fault, with the first words of the message; `bracketed`: only messages of the longer language are looked at. */
export const cutIn = (page: Page, where: string, bracketed = true): Promise<string[]> =>
  page.evaluate(
    (name, onlyBracketed) => {
      const faults: string[] = [];
      const over = document.documentElement.scrollWidth - innerWidth;
      if (over > 0) faults.push(`${name}: ${over} px too wide`);
      const LARGE = 40;
      const lines: { text: string; line: DOMRect }[] = [];
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        const text = node.textContent?.trim() ?? '';
        const element = node.parentElement;
        // A name that a person gave, and what stands with it in the head of a sweep, may be shortened; a message may not.
        if (onlyBracketed && element?.closest('.subject')) continue;
        if (!element || !(onlyBracketed ? /[⟦⟧]/u : /\S/u).test(text) || !element.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
          continue;
        const range = document.createRange();
        range.selectNodeContents(node);
        const written = range.getBoundingClientRect();
        // For a screen reader alone.
        if (written.width <= 2 || element.closest('.visually-hidden, .unseen')) continue;
        const letter = Number.parseFloat(getComputedStyle(element).fontSize);
        // The line of a large figure is higher than what is drawn of it.
        if (letter < LARGE && !isLaidOver(element)) lines.push(...[...range.getClientRects()].map((line) => ({ text, line })));
        // A few letters a line are no words any more.
        if (written.width < 3 * letter && written.height > 6 * letter)
          faults.push(`${name}: “${text.slice(0, 50)}” is squeezed to ${Math.round(written.width)} px`);
        for (let frame: Element | null = element; frame && frame !== document.body; frame = frame.parentElement) {
          const style = getComputedStyle(frame);
          if (style.position === 'absolute' && (style.clipPath !== 'none' || frame.clientWidth <= 2)) break;
          const cuts = [style.overflowX, style.overflowY].some((way) => way === 'hidden' || way === 'clip');
          const frames = cuts || /^(BUTTON|FIELDSET|SUMMARY)$/.test(frame.tagName) || frame.matches('.card, .chip, .notice, .switch, [role=dialog]');
          if (!frames) continue;
          const edge = frame.getBoundingClientRect();
          const beyond = Math.max(edge.left - written.left, written.right - edge.right, edge.top - written.top, written.bottom - edge.bottom);
          if (beyond > 1.5) {
            const what = `${frame.tagName.toLowerCase()}.${frame.className}`;
            faults.push(`${name}: “${text.slice(0, 50)}” ${cuts ? 'is cut by' : 'crosses'} ${what} by ${Math.round(beyond)} px`);
            break;
          }
        }
      }
      for (const [at, { text, line }] of lines.entries()) {
        const under = lines.slice(at + 1).find((other) => other.text !== text && isOver(line, other.line));
        if (under) faults.push(`${name}: “${text.slice(0, 40)}” is drawn over “${under.text.slice(0, 40)}”`);
      }
      return faults;

      /** What is laid over the rest on purpose. */
      function isLaidOver(element: Element): boolean {
        for (let at: Element | null = element; at; at = at.parentElement) if (/absolute|fixed|sticky/.test(getComputedStyle(at).position)) return true;
        return false;
      }

      /** By a third of a line's height, and more than a letter's width. */
      function isOver(a: DOMRect, b: DOMRect): boolean {
        const width = Math.min(a.right, b.right) - Math.max(a.left, b.left);
        const height = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
        return width > 6 && height > Math.min(a.height, b.height) / 3;
      }
    },
    where,
    bracketed,
  );

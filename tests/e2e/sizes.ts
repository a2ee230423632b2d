// What a page shows too small, measured: what is to be pressed, words that are to be read from afar, and words that are broken.
import type { Page } from 'puppeteer-core';

/** In px: WCAG 2.2, 2.5.8. */
const LEAST_TARGET = 24;
/** In px, for what is read from the tripod. */
const LEAST_FAR = 24;

/** Whatever is pressed; what a label names is pressed by its label, too. */
export const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate((least) => {
    const small: string[] = [];
    for (const target of document.querySelectorAll<HTMLElement>('button, a[href], input, select, textarea, summary, [role="button"]')) {
      if (!target.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      const boxes = [target, ...(target instanceof HTMLInputElement ? (target.labels ?? []) : [])].map((one) => one.getBoundingClientRect());
      if (boxes.some(({ width, height }) => width > least - 0.5 && height > least - 0.5)) continue;
      const [box] = boxes;
      const called = target.getAttribute('aria-label') ?? target.textContent ?? target.tagName;
      small.push(`“${called.trim().slice(0, 40)}” is ${box?.width.toFixed(0)} by ${box?.height.toFixed(0)} px to press`);
    }
    return small;
  }, LEAST_TARGET);

export const smallWords = (page: Page, within: string): Promise<string[]> =>
  page.evaluate(
    (inside, least) => {
      const small: string[] = [];
      for (const element of document.querySelectorAll(`${inside} *`)) {
        const shown = [...element.childNodes].some((node) => node instanceof Text && node.data.trim() !== '');
        if (!shown || element.closest('.unseen') || !element.checkVisibility({ visibilityProperty: true })) continue;
        const size = Number.parseFloat(getComputedStyle(element).fontSize);
        if (size < least) small.push(`“${element.textContent?.trim().slice(0, 40)}” is written in ${size} px`);
      }
      return small;
    },
    within,
    LEAST_FAR,
  );

/** Words that stand in two lines and say so by no hyphen: a word must be read at a glance, and by one hyphen it is still read as one. */
export const brokenWords = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const broken: string[] = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      if (!element?.checkVisibility({ visibilityProperty: true }) || element.closest('.unseen, .visually-hidden')) continue;
      // What lies between two places where a hyphen may come; the hyphen itself stands where its second part begins.
      for (const { 0: piece, index } of (node.textContent ?? '').matchAll(/(?<![\p{L}\u00ad])\p{L}+|(?<=\u00ad\p{L})\p{L}+/gu)) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + piece.length);
        const lines = [...range.getClientRects()].filter(({ width }) => width > 0).map(({ top }) => Math.round(top));
        if (new Set(lines).size > 1) broken.push(piece);
      }
    }
    return broken;
  });

/** What stands in an empty field and does not fit into it. */
export const cutPlaceholders = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const pen = document.createElement('canvas').getContext('2d');
    return [...document.querySelectorAll('input')].flatMap((field) => {
      if (!pen || field.value !== '' || field.placeholder === '' || !field.checkVisibility()) return [];
      const { paddingInlineStart, paddingInlineEnd } = getComputedStyle(field);
      const { fontWeight, fontSize, fontFamily } = getComputedStyle(field, '::placeholder');
      pen.font = `${fontWeight} ${fontSize} ${fontFamily}`;
      // At the end of a search the browser keeps a place for what empties it.
      const kept = Number.parseFloat(paddingInlineStart) + Number.parseFloat(paddingInlineEnd) + (field.type === 'search' ? 16 : 0);
      const over = pen.measureText(field.placeholder).width - (field.clientWidth - kept);
      return over > 1 ? [`“${field.placeholder}” is ${Math.round(over)} px too long for its field`] : [];
    });
  });

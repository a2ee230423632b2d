// Runs axe-core in a page and says in words what it found.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'puppeteer-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const COLOURS = ['color-contrast', 'link-in-text-block'];

/** One line a violation: its rule, what is wrong, and where. Empty when there is none. */
export const accessibilityFaults = (page: Page): Promise<string[]> => violations(page, {}, null);

/** Everything but colours, which no width changes. */
export const faultsBesideColours = (page: Page): Promise<string[]> =>
  violations(page, { rules: Object.fromEntries(COLOURS.map((rule) => [rule, { enabled: false }])) }, null);

/** How far words stand out from their ground, in the theme that the page wears; `least`: asked of words of every size. */
export const contrastFaults = (page: Page, least: number | null = null): Promise<string[]> =>
  violations(page, { runOnly: { type: 'rule', values: COLOURS } }, least);

async function violations(page: Page, options: RunOptions, least: number | null): Promise<string[]> {
  if (await page.evaluate(() => !('axe' in globalThis))) await page.evaluate(source);
  const json = await page.evaluate(
    async (chosen, expected) => {
      const { axe } = globalThis as unknown as {
        axe: { reset: () => void; configure: (spec: object) => void; run: (how: object) => Promise<AxeResults> };
      };
      const usual = {
        ignoreUnicode: true,
        boldValue: 700,
        boldTextPt: 14,
        largeTextPt: 18,
        shadowOutlineEmMax: 0.2,
        textStrokeEmMin: 0.03,
        pseudoSizeThreshold: 0.25,
      };
      const contrastRatio = { normal: { expected }, large: { expected } };
      if (expected !== null) axe.configure({ checks: [{ id: 'color-contrast', options: { ...usual, contrastRatio } }] });
      const found = await axe.run({ ...chosen, resultTypes: ['violations'] });
      if (expected !== null) axe.reset();
      return JSON.stringify(found.violations);
    },
    options as object,
    least,
  );
  const found = JSON.parse(json) as AxeResults['violations'];
  return found.flatMap(({ id, help, nodes }) => nodes.map(({ html, any }) => `${id}: ${help} (${html}) ${any[0]?.message ?? ''}`));
}

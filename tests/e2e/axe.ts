// Runs axe-core in a page and says in words what it found.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import type { AxeResults } from 'axe-core';
import type { Page } from 'puppeteer-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** One line a violation: its rule, what is wrong, and where. Empty when there is none. */
export async function accessibilityFaults(page: Page): Promise<string[]> {
  await page.evaluate(source);
  const json = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: { run: () => Promise<AxeResults> } };
    return JSON.stringify((await axe.run()).violations);
  });
  const violations = JSON.parse(json) as AxeResults['violations'];
  return violations.map(({ id, help, nodes }) => `${id}: ${help} (${nodes.map((node) => node.html).join(' ; ')})`);
}

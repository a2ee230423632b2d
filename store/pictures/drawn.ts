// Waits as a person does who looks: until what has come is drawn.
import type { Page } from 'puppeteer-core';

/** What is read late has come by then, and a frame was drawn with it. */
export async function drawn(panel: Page): Promise<void> {
  await new Promise((later) => setTimeout(later, 300));
  await panel.evaluate(() => new Promise((frame) => requestAnimationFrame(() => requestAnimationFrame(frame))));
}

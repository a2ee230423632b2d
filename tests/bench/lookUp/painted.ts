// From the keystroke to the list on the screen, in the panel of a real Chromium. A letter must be answered in the very
// next frame, and what the browser does for it (the look-up, the drawing of the list, layout and paint) must fit in one.
import type { Library } from '../../../src/logbook/library.ts';
import { launchChromium } from '../../e2e/chromium.ts';
import { most, shown, type Figure } from '../figure.ts';

/** One frame of a screen that shows sixty a second. */
const FRAME = 1000 / 60;
const ROUNDS = 2;

/** One keystroke, in milliseconds: until the list stood in the page, in the frame that drew it, and all with the wait between. */
interface Stroke {
  readonly answering: number;
  readonly painting: number;
  readonly whole: number;
  readonly inNextFrame: boolean;
}

export async function painted(library: Library, queries: readonly string[]): Promise<Figure[]> {
  const strokes = await strokesIn(library, queries);
  const work = sorted(strokes.map(({ answering, painting }) => answering + painting));
  const whole = sorted(strokes.map((stroke) => stroke.whole));
  return [
    shown('keystrokes in the panel', strokes.length),
    most('keystrokes not answered in the next frame', strokes.filter(({ inNextFrame }) => !inNextFrame).length, 0),
    shown('keystroke to painted list: median of the work, ms', at(work, 0.5)),
    most('keystroke to painted list: 95th percentile of the work, ms', at(work, 0.95), FRAME),
    shown('keystroke to painted list: slowest work, ms', at(work, 1)),
    shown('keystroke to painted list: median with the wait for the frame, ms', at(whole, 0.5)),
  ];
}

const sorted = (times: readonly number[]): number[] => times.toSorted((a, b) => a - b);
const at = (times: readonly number[], share: number): number => times[Math.floor(times.length * share)] ?? times.at(-1) ?? Infinity;

async function strokesIn(library: Library, queries: readonly string[]): Promise<Stroke[]> {
  const chromium = await launchChromium();
  try {
    const entries = Object.fromEntries(library.entries.map((entry) => [`entry:${entry.id}`, entry]));
    const everything = JSON.stringify({ version: 3, kit: library.kit, ...entries });
    await chromium.worker.evaluate((json) => chrome.storage.local.set(JSON.parse(json)), everything);
    const page = await chromium.openTab();
    await page.locator('::-p-aria(Logbook)').click();
    const field = await page.waitForSelector('input[type="search"]');
    await page.waitForSelector('.entries li');
    await page.evaluate(watchStrokes);
    for (let round = 0; round < ROUNDS; round++) {
      for (const query of queries) {
        await field?.click({ count: 3 });
        await page.keyboard.type(query, { delay: 40 });
      }
    }
    return await page.evaluate(() => (globalThis as unknown as { strokes: Stroke[] }).strokes);
  } finally {
    await chromium.close();
  }
}

/** Runs in the page. A message sent from a frame's callback comes when that frame has been drawn. */
function watchStrokes(): void {
  const strokes: Stroke[] = [];
  Object.assign(globalThis, { strokes });
  const place = document.querySelector('main');
  if (!place) throw new Error('There is no panel.');
  let changed = 0;
  new MutationObserver(() => (changed = performance.now())).observe(place, { childList: true, subtree: true, characterData: true });
  document.addEventListener(
    'input',
    () => {
      const pressed = performance.now();
      const { port1, port2 } = new MessageChannel();
      requestAnimationFrame(() => {
        const began = performance.now();
        const answering = Math.max(0, changed - pressed);
        port1.addEventListener('message', () => {
          const drawn = performance.now();
          const last = changed;
          requestAnimationFrame(() => strokes.push({ answering, painting: drawn - began, whole: drawn - pressed, inNextFrame: changed === last }));
        });
        port1.start();
        port2.postMessage(null);
      });
    },
    { capture: true },
  );
}

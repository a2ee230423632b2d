// One opening of the real side panel in a fresh browser: from the click on the toolbar until the person sees what they can
// press. The marks in the page (`elementtiming="first"`) say when that was drawn, by the browser's own account; what is
// drawn is workable from that moment, which tests/e2e/firstPaint.test.ts holds.
import { launchChromium } from '../../e2e/chromium.ts';

/** Milliseconds since the click. */
export interface Opening {
  readonly first: number;
  /** When the screen stood, with all that was stored; of a panel that has one. */
  readonly whole: number | null;
}

/** So that the start of the browser is over. */
const QUIET = 300;

export async function opening(extension: string): Promise<Opening> {
  const chromium = await launchChromium({ extension });
  try {
    await new Promise((go) => setTimeout(go, QUIET));
    const { panel, clicked } = await chromium.clickToolbar();
    const seen = await panel.evaluate(seenAt, true);
    return { first: seen.first - clicked, whole: seen.whole === null ? null : seen.whole - clicked };
  } finally {
    await chromium.close();
  }
}

/** Runs in the page; moments by the machine's clock. `waits`: until the screen stands with all that is stored. */
export async function seenAt(waits: boolean): Promise<{ first: number; whole: number | null }> {
  const at = (time: number): number => performance.timeOrigin + time;
  const drawn = new Promise<number>((done) => {
    new PerformanceObserver((list) => {
      const mark = list.getEntries().find((entry) => (entry as PerformanceEntry & { identifier?: string }).identifier === 'first');
      if (mark) done((mark as PerformanceEntry & { renderTime: number }).renderTime);
    }).observe({ type: 'element', buffered: true });
  });
  const main = document.querySelector('main');
  const stands = new Promise<number | null>((done) => {
    if (!main || !waits) return done(null);
    const look = (): void => (main.dataset['screen'] === undefined ? void setTimeout(look, 1) : done(performance.now()));
    look();
  });
  const [first, whole] = await Promise.all([drawn, stands]);
  return { first: at(first), whole: whole === null ? null : at(whole) };
}

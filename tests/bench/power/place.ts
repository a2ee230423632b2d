// A browser on a profile that stays: its panel, a page of the extension beside it, and its power.
import { launchChromium } from '../../e2e/chromium.ts';
import { launchFirefox } from '../../e2e/firefox.ts';
import { seatAt, seatAtSidebar, type Seat } from '../../e2e/seat.ts';

export const BROWSERS = ['chromium', 'firefox'] as const;
export type BrowserName = (typeof BROWSERS)[number];

export interface Place {
  /** Opens the panel and does not wait for what it shows; `docked`: at the side, where the browser also has it in a tab. */
  panel(docked: boolean): Promise<Seat>;
  /** A part of the extension that is no panel. */
  beside(): Promise<Pick<Seat, 'evaluate'>>;
  kill(): Promise<void>;
}

export const open = (browser: BrowserName, profile: string): Promise<Place> => (browser === 'chromium' ? inChromium(profile) : inFirefox(profile));

async function inChromium(profile: string): Promise<Place> {
  const { worker, openPanel, openTab, kill } = await launchChromium({ profile });
  return {
    panel: async (docked) => seatAt(await (docked ? openPanel() : openTab())),
    beside: () => Promise.resolve({ evaluate: (fn, ...args) => worker.evaluate(fn as (...all: unknown[]) => never, ...args) }),
    kill,
  };
}

async function inFirefox(profile: string): Promise<Place> {
  const { openSidebar, openTab, kill } = await launchFirefox({ profile });
  return {
    panel: async () => seatAtSidebar(await openSidebar()),
    async beside() {
      const page = await openTab('h1', 'microphone.html');
      return {
        // As JSON: of an object that stands in two places of what is answered the driver gives only the first.
        async evaluate(fn, ...args) {
          const json = await page.evaluate(`(async () => JSON.stringify({ value: await (${fn.toString()})(...${JSON.stringify(args)}) }))()`);
          return (JSON.parse(String(json)) as { value: never }).value;
        },
      };
    },
    kill,
  };
}

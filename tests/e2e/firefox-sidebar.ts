// The panel in Firefox's real sidebar: opened by a real click on the toolbar button, then read, clicked and typed into.
import { writeFile } from 'node:fs/promises';
import type { Browser } from 'puppeteer-core';
import { firefoxAddOnId } from '../../manifest/firefox.ts';
import { clickInSidebar, clickToolbarButton, photographSidebar, runInSidebar, typeKey } from './firefox-privileged.ts';
import { firefoxWindow, type FirefoxWindow } from './firefox-window.ts';
import { pictureFile } from './screens.ts';

export type Sidebar = {
  /** Calls the function in the panel with JSON arguments; what it returns or resolves to must be JSON too. */
  evaluate: <Args extends unknown[], Result>(fn: (...args: Args) => Result | Promise<Result>, ...args: Args) => Promise<Result>;
  /** Polls the function until it returns something true. */
  waitFor: <Args extends readonly unknown[]>(fn: (...args: Args) => boolean, ...args: Args) => Promise<void>;
  /** A trusted click in the middle of the element. */
  click: (selector: string) => Promise<void>;
  /** A trusted press and release, for example of 'Enter', ' ' or 'k'. */
  press: (key: string) => Promise<void>;
  /** The two halves of a press, for a key that is held down. */
  keyDown: (key: string) => Promise<void>;
  keyUp: (key: string) => Promise<void>;
  /** Saves what is visible as dist/screenshots/NAME.png and returns that path. */
  picture: (name: string) => Promise<string>;
};

type WatchedDocument = Document & { clicked?: Promise<void> };

/** The name that Firefox makes of the add-on's id for its widgets. */
const widget = firefoxAddOnId.replace(/[^a-z0-9_-]/g, '_');

export async function openSidebar(browser: Browser): Promise<Sidebar> {
  const window = await firefoxWindow(browser);
  await window.call(clickToolbarButton, widget);
  const evaluate: Sidebar['evaluate'] = async (fn, ...args) => {
    const result = await inPanel(window, `(${fn.toString()})(...${JSON.stringify(args)})`);
    return result as Awaited<ReturnType<typeof fn>>;
  };
  const waitFor: Sidebar['waitFor'] = async (fn, ...args) => {
    const deadline = Date.now() + 30_000;
    while (!(await evaluate(fn, ...args))) {
      if (Date.now() > deadline) throw new Error(`In the sidebar this stayed false for 30 s: ${fn.toString()} ${JSON.stringify(args)}`);
      await new Promise((go) => setTimeout(go, 50));
    }
  };
  await waitFor(() => document.readyState === 'complete');
  return {
    evaluate,
    waitFor,
    click: async (selector) => {
      // A screen whose script is still being read shows it a moment later.
      await waitFor((wanted) => document.querySelector(wanted) !== null, selector);
      const point = await evaluate((wanted) => {
        const element = document.querySelector(wanted);
        element?.scrollIntoView({ block: 'center' });
        const box = element?.getBoundingClientRect();
        const watched = document as WatchedDocument;
        watched.clicked = new Promise((arrived) => document.addEventListener('mouseup', () => setTimeout(arrived), { once: true, capture: true }));
        return box ? { x: box.x + box.width / 2, y: box.y + box.height / 2 } : null;
      }, selector);
      if (point === null) throw new Error(`The sidebar shows no ${selector}.`);
      await window.call(clickInSidebar, point);
      // It goes to the panel's process by another way than the keys, which might overtake it.
      await evaluate(() => (document as WatchedDocument).clicked);
    },
    press: async (key) => {
      await window.call(runInSidebar, typeKey(key, 'keydown', 'keyup'));
    },
    keyDown: async (key) => {
      await window.call(runInSidebar, typeKey(key, 'keydown'));
    },
    keyUp: async (key) => {
      await window.call(runInSidebar, typeKey(key, 'keyup'));
    },
    picture: async (name) => {
      const path = pictureFile(name);
      await writeFile(path, Buffer.from(String(await window.call(photographSidebar)), 'base64'));
      return path;
    },
  };
}

/** Evaluates the expression with the panel's own rights and globals, and waits for it. */
async function inPanel(window: FirefoxWindow, expression: string): Promise<unknown> {
  const code = `(async () => JSON.stringify({ value: await ${expression} }))()`;
  const json = await window.call(
    runInSidebar,
    `Cu.evalInSandbox(${JSON.stringify(code)}, new Cu.Sandbox(content, { sandboxPrototype: content, wantXrays: false }))`,
  );
  return (JSON.parse(String(json)) as { value?: unknown }).value;
}

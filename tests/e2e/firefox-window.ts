// Runs code in Firefox's own window, with the browser's privileges (--remote-allow-system-access): the only way to the
// toolbar and to the sidebar, which WebDriver does not list as pages.
import type { Browser } from 'puppeteer-core';

type Connection = { send: (method: string, params: object) => Promise<{ result: unknown }> };

/** The driver has a WebDriver BiDi connection for Firefox but does not publish its type. */
export const connectionOf = (browser: Browser): Connection => (browser as unknown as { connection: Connection }).connection;

type Tree = { contexts: { context: string; url: string }[] };

type Outcome = { type: 'success'; result: { type: string; value?: string } } | { type: 'exception'; exceptionDetails: { text: string } };

export type FirefoxWindow = {
  /** Calls the function, given as JavaScript text, with JSON arguments; what it returns or resolves to must be JSON too. */
  call: (functionText: string, ...args: readonly unknown[]) => Promise<unknown>;
};

export async function firefoxWindow(browser: Browser): Promise<FirefoxWindow> {
  const connection = connectionOf(browser);
  const tree = (await connection.send('browsingContext.getTree', { 'moz:scope': 'chrome' })).result as Tree;
  const context = tree.contexts.find(({ url }) => url.endsWith('/browser.xhtml'))?.context;
  if (context === undefined) throw new Error('Firefox shows no window.');

  return {
    call: async (functionText, ...args) => {
      const { result } = await connection.send('script.callFunction', {
        functionDeclaration: `async (args) => JSON.stringify(await (${functionText})(...JSON.parse(args)))`,
        arguments: [{ type: 'string', value: JSON.stringify(args) }],
        target: { context },
        awaitPromise: true,
      });
      const outcome = result as Outcome;
      if (outcome.type === 'exception') throw new Error(outcome.exceptionDetails.text);
      return outcome.result.value === undefined ? undefined : (JSON.parse(outcome.result.value) as unknown);
    },
  };
}

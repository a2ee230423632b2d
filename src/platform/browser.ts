// The one door to the browser's extension API. Firefox and newer Chromium bring it as `browser`; only where that is missing
// the polyfill is loaded in its place. The polyfill throws when it is imported outside an extension.
import type { Browser } from 'webextension-polyfill';

const native = globalThis.browser as unknown as Browser | undefined;

export const browser: Browser = native ?? (await import('webextension-polyfill')).default;

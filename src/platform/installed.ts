// What is installed: the version of the extension and the browser it runs in; and the version that was open here last, remembered beside the
// theme, as only a note hangs on it.
import { browser } from './browser.ts';
import { sidePanel } from './toolbar.ts';

const REMEMBERED = 'version';

export interface Installed {
  readonly version: () => string;
  /** As the browser names itself. */
  readonly browser: () => string;
  /** The version that was open here last; null before the first. */
  readonly lastSeen: () => string | null;
  /** This version has been seen. */
  readonly see: () => void;
  /** Opens the browser's own page of keyboard shortcuts; null where an extension may not. */
  readonly openShortcuts: (() => void) | null;
}

export const installed: Installed = {
  version: () => browser.runtime.getManifest().version,
  browser: () => navigator.userAgent,
  lastSeen() {
    try {
      return localStorage.getItem(REMEMBERED);
    } catch {
      // Site data may be forbidden.
      return null;
    }
  },
  see() {
    try {
      localStorage.setItem(REMEMBERED, installed.version());
    } catch {
      // Without it there is no note after an update.
    }
  },
  openShortcuts: sidePanel ? () => void browser.tabs.create({ url: 'chrome://extensions/shortcuts' }) : null,
};

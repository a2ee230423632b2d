// The one door to the browser's extension API. The polyfill throws when it is imported outside an extension, so nothing
// else imports it, and what it lacks is typed here.
import browser from 'webextension-polyfill';

export { browser };

/** Chromium's side panel; Firefox has none and uses `browser.sidebarAction`. */
export const sidePanel: typeof chrome.sidePanel | undefined = chrome.sidePanel;

// What the toolbar button opens: Chromium's side panel, or Firefox's sidebar. A background script cannot wait for the
// polyfill, so these are the browser's own objects, each undefined in the other browser.
interface Sidebar {
  toggle(): Promise<void>;
}

export const sidePanel: typeof chrome.sidePanel | undefined = chrome.sidePanel;
export const sidebar: Sidebar | undefined = (chrome as { readonly sidebarAction?: Sidebar }).sidebarAction;

/** To be called while the script starts, or the first press is missed. */
export const onToolbarButton = (listener: () => void): void => chrome.action.onClicked.addListener(listener);

/** To be called while the script starts: tells of the first install, and of no update. */
export const onFirstInstall = (listener: () => void): void =>
  chrome.runtime.onInstalled.addListener(({ reason }) => {
    if (reason === 'install') listener();
  });

/** The keys that open the panel, as the browser writes them; null where there are none. */
export async function openingKeys(): Promise<string | null> {
  const commands = await chrome.commands.getAll();
  return commands.find(({ name }) => name?.startsWith('_execute'))?.shortcut || null;
}

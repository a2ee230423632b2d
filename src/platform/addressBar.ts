// The keyword in the address bar, the badge on the toolbar button, and the store as a background script sees it. It cannot
// wait for the polyfill, so these are the browser's own objects.
import { sidePanel } from './toolbar.ts';

/** To be called while the script starts, or what is typed first is missed. */
export function onTyped(answer: (typed: string) => Promise<readonly string[]>): void {
  chrome.omnibox.onInputChanged.addListener((typed, suggest) => {
    const show = async (): Promise<void> => {
      const lines = await answer(typed);
      // Firefox shows the first line a letter late, so there all of them stand in the list below it.
      if (sidePanel) chrome.omnibox.setDefaultSuggestion({ description: described(lines[0] ?? '') });
      suggest(lines.slice(sidePanel ? 1 : 0).map((line) => ({ content: line, description: described(line) })));
    };
    void show();
  });
}

/** Chromium reads the description as XML, Firefox as it stands. */
const described = (line: string): string =>
  sidePanel ? line.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;') : line;

/** An answer was chosen: the panel, in a tab, because no side panel may be opened from here. */
export const opensPanel = (): void => chrome.omnibox.onInputEntered.addListener(() => void chrome.tabs.create({ url: chrome.runtime.getURL('panel.html') }));

/** The page that says how the panel is opened. */
export const opensWelcome = (): void => void chrome.tabs.create({ url: chrome.runtime.getURL('welcome.html') });

/** What lies under this key, or everything. */
export const readStored = (key: string | null): Promise<Record<string, unknown>> => chrome.storage.local.get(key);

export const onStored = (listener: (changes: Readonly<Record<string, unknown>>) => void): void =>
  chrome.storage.local.onChanged.addListener((changes) => listener(Object.fromEntries(Object.entries(changes).map(([key, { newValue }]) => [key, newValue]))));

/** Marks the toolbar button, or takes the mark off. */
export async function mark(badge: string, title: string): Promise<void> {
  await chrome.action.setBadgeText({ text: badge });
  await chrome.action.setTitle({ title });
}

export const message = (name: string): string => chrome.i18n.getMessage(name);

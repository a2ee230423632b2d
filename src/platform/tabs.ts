// Opening a page of the extension in a tab: where a side panel is too narrow, or may not ask.
import { browser } from './browser.ts';

export function openPage(path: 'microphone.html' | `target.html#${string}`): void {
  void browser.tabs.create({ url: browser.runtime.getURL(path) });
}

// Opening a page of the extension in a tab: where a side panel is too narrow, or may not ask.
import { browser } from './browser.ts';

/** The pages that mend what stands in the way of hearing. */
type HearingPage = 'microphone.html' | 'microphone.html#ask' | 'hearing.html' | 'hearing.html#first';
/** What is packed beside the pages: whose work is in the extension, and on what terms. */
type Licences = 'licences.txt';
export type Page = HearingPage | Licences | `${'card' | 'entering' | 'target' | 'workshop'}.html#${string}`;

/** What the address of this page asks for, behind its #. */
export const askedFor = (): string => location.hash.slice(1);

export function openPage(path: Page): void {
  void browser.tabs.create({ url: browser.runtime.getURL(path) });
}

// The first script of the panel: small, so that the start is drawn and takes presses as soon as the browser shows the panel.
// The browser keeps a side panel hidden until its page has loaded, with every script that the page names; so the page
// names this one alone. What stands in the page is the start with nothing under way; with a sweep under way it stays
// hidden, and the panel shows what is true when it knows it.
import type { KEY } from '../../logbook/keys.ts';
import { isStored } from '../../platform/isStored.ts';
import { rememberedLanguages, sayLanguage } from '../../platform/language.ts';
import { wearRememberedTheme } from '../../platform/theme.ts';
import { holdInputs } from './held.ts';

/** The key of a sweep under way, without the others: all of this is read before the first frame. */
const LIVE = 'live' satisfies (typeof KEY)['live'];

/** Where no frame is drawn, as in a window that was never shown, the panel does not wait for one. */
const NO_FRAME = 250;

wearRememberedTheme();
// Remembering takes the disk, which must wait until the first frame is drawn.
sayLanguage(rememberedLanguages());
const place = document.querySelector<HTMLElement>('#panel');
if (place) void open(place);

async function open(panel: HTMLElement): Promise<void> {
  inLanguage(panel);
  const held = holdInputs(panel);
  // Where the store cannot be read, nothing is shown either: the panel says what is wrong.
  if (!(await isStored(LIVE).catch(() => true))) {
    panel.hidden = false;
    panel.querySelector('input')?.focus();
    // The rest costs more than the first frame: it must not come before it.
    await nextFrame();
  }
  try {
    await (await import('../panel.tsx')).open(panel, held);
  } catch {
    panel.hidden = true;
    document.querySelector('#unread')?.removeAttribute('hidden');
  }
}

/** The start stands in the page in English, and in every other language beside it. */
function inLanguage(panel: HTMLElement): void {
  const drawn = document.querySelector<HTMLTemplateElement>(`template[lang="${document.documentElement.lang}"]`)?.content;
  const [start, unread] = drawn?.children ?? [];
  if (!start || !unread) return;
  panel.replaceChildren(...start.childNodes);
  document.querySelector('#unread')?.replaceChildren(...unread.childNodes);
}

const nextFrame = (): Promise<unknown> =>
  new Promise((drawn) => {
    requestAnimationFrame(drawn);
    setTimeout(drawn, NO_FRAME);
  });

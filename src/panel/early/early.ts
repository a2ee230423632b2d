// The first script of the panel: small, so that the start is drawn and takes presses as soon as the browser shows the panel.
// The browser keeps a side panel hidden until its page has loaded, with every script that the page names; so the page
// names this one alone. What stands in the page is the start with nothing under way; with a sweep under way it stays
// hidden, and the panel shows what is true when it knows it.
import { sweepUnderWay } from '../../platform/underWay.ts';
import { UNREAD } from '../../unread.ts';
import { holdInputs } from './held.ts';

/** Where no frame is drawn, as in a window that was never shown, the panel does not wait for one. */
const NO_FRAME = 250;

const place = document.querySelector<HTMLElement>('#panel');
if (place) void open(place);

async function open(panel: HTMLElement): Promise<void> {
  const held = holdInputs(panel);
  const first = await showsFirst(panel);
  // The rest costs more than the first frame: it must not come before it.
  if (first) await nextFrame();
  try {
    const { open: openPanel } = await import('../panel.tsx');
    openPanel(panel, held);
  } catch {
    panel.textContent = UNREAD;
    panel.hidden = false;
  }
}

async function showsFirst(panel: HTMLElement): Promise<boolean> {
  try {
    if (await sweepUnderWay()) return false;
  } catch {
    return false;
  }
  panel.hidden = false;
  return true;
}

const nextFrame = (): Promise<unknown> =>
  new Promise((drawn) => {
    requestAnimationFrame(drawn);
    setTimeout(drawn, NO_FRAME);
  });

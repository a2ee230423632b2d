// Opens the panel from the toolbar button and from the shortcut, says after the first install where these are, answers in the address bar, and marks the button while a
// sweep is under way. It keeps nothing that it cannot read again, so the browser may stop it at any time.
import { KEY } from '../logbook/keys.ts';
import { mark, message, onStored, onTyped, opensPanel, opensWelcome, readStored } from '../platform/addressBar.ts';
import { now } from '../platform/clock.ts';
import { likedLanguages } from '../platform/language.ts';
import { onFirstInstall, onToolbarButton, sidebar, sidePanel } from '../platform/toolbar.ts';
import { createLastValues } from './lastValues.ts';

if (sidePanel) {
  void sidePanel.setPanelBehavior({ openPanelOnActionClick: true });
  // Firefox says by itself where the button is.
  onFirstInstall(opensWelcome);
} else {
  // Firefox counts the click as the person's wish only until the first await: toggle at once.
  onToolbarButton(() => void sidebar?.toggle());
}

const lastValues = createLastValues(() => readStored(null), now, likedLanguages);
onTyped(lastValues.answer);
opensPanel();

let marked = false;

/** A sweep writes its journal at every step; the mark changes only when it begins or ends. */
function markSweep(live: unknown): void {
  const sweeping = live !== undefined;
  if (sweeping === marked) return;
  marked = sweeping;
  void mark(sweeping ? '…' : '', message(sweeping ? 'sweeping' : 'open'));
}

onStored((changes) => {
  if (Object.keys(changes).some((key) => key !== KEY.live)) lastValues.forget();
  if (KEY.live in changes) markSweep(changes[KEY.live]);
});
void readStored(KEY.live).then((stored) => markSweep(stored[KEY.live]));

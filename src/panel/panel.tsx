// The panel itself: opens a session on this browser and draws the screens over what stands in the page.
import { hydrate } from 'preact';
import { App } from './app.tsx';
import type { Held } from './early/held.ts';
import { openSession } from './session/open.ts';

export function open(place: HTMLElement, held: Held): void {
  const ready = (): void => {
    place.hidden = false;
    held.release();
  };
  hydrate(<App session={openSession()} onReady={ready} />, place);
  held.tellTyped();
}

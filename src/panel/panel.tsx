// The panel itself: opens a session on this browser and draws the screens over what stands in the page.
import { hydrate } from 'preact';
import { App } from './app.tsx';
import type { Held } from './early/held.ts';
import { rememberedLanguages } from '../platform/language.ts';
import { askedFor } from '../platform/tabs.ts';
import { changeLanguages } from '../words/catalogue.ts';
import { openSession } from './session/open.ts';

/** In the languages that were worn last; those that are set now follow with the settings. */
export async function open(place: HTMLElement, held: Held): Promise<void> {
  await changeLanguages(rememberedLanguages());
  hydrate(<App session={openSession()} held={held} asked={askedFor()} />, place);
  held.tellTyped();
}

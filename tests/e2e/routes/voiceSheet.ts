// The way through what stands behind the microphone mark, and the sound check: with a microphone that nobody but the route allows, so without the
// third argument of `murmuring`.
import type { Settings } from '../../../src/settings.ts';
import { USUAL_SETTINGS } from '../../../src/usualSettings.ts';
import { at, go, settled, untilShown, untilStart, type Tour } from './tour.ts';

const wish = ({ chromium }: Tour, how: Settings['voice']['wish']): Promise<void> =>
  chromium.worker.evaluate((settings) => chrome.storage.local.set({ settings }), { ...USUAL_SETTINGS, voice: { ...USUAL_SETTINGS.voice, wish: how } });

const microphone = ({ chromium }: Tour, state: 'denied' | 'granted'): Promise<void> =>
  chromium.browser.defaultBrowserContext().setPermission(`chrome-extension://${chromium.extensionId}`, { permission: { name: 'microphone' }, state });

export async function voiceSheet(tour: Tour): Promise<void> {
  const { page, seat } = tour;
  await go(tour, 'Sound check');
  await untilShown(tour, 'Loudness');
  await settled(tour);
  await at(tour, 'sound-check');
  await go(tour, 'Done');
  await untilStart(seat);
  await page.click('.voicemark');
  await settled(tour);
  await at(tour, 'voice-offered');
  await microphone(tour, 'denied');
  await wish(tour, 'browser');
  await untilShown(tour, 'so voice stays off');
  await at(tour, 'voice-refused');
  await wish(tour, 'own');
  await microphone(tour, 'granted');
  await untilShown(tour, 'words are taught');
  await at(tour, 'voice-teaching');
}

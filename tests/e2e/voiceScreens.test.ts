// The microphone mark in its states, every stage of the voice sheet and the sound check, at the width of the narrowest sidebar
// and of the side panel, in both themes: axe finds no fault, nothing is too wide, and a picture is kept for people to look at.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import type { Settings } from '../../src/settings.ts';
import { USUAL_SETTINGS } from '../../src/usualSettings.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { faults } from './faults.ts';
import { answer, murmuring } from './murmuring.ts';
import { seatAt, until, untilMark, untilPhase, untilText } from './seat.ts';
import { startSpeechService } from './speech-service.ts';
import { putUnderWay, sweepIn } from './underWay.ts';

const setVoice = ({ worker }: Chromium, patch: Partial<Settings['voice']>, sound = true): Promise<void> =>
  worker.evaluate((settings) => chrome.storage.local.set({ settings }), {
    ...USUAL_SETTINGS,
    sound,
    voice: { ...USUAL_SETTINGS.voice, ...patch },
  });

async function open(args: readonly string[]): Promise<{ chromium: Chromium; page: Page; origin: string }> {
  const chromium = await launchChromium({ args });
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  await until(seatAt(page), 'the start', ({ screen }) => screen === 'start');
  return { chromium, page, origin: `chrome-extension://${chromium.extensionId}` };
}

async function playSound(page: Page): Promise<void> {
  await page.locator('::-p-text(Sound check)').click();
  await untilText(seatAt(page), 'Loudness');
  await page.locator('::-p-text(Play the tones)').wait();
}

test('the sheet from the offer to the trial, refused, and by taught words', async () => {
  const mouth: { word: string | null } = { word: null };
  const service = await startSpeechService((utterance) => answer(utterance, () => Promise.resolve(mouth.word)));
  onTestFinished(service.close);
  const [fake = '', file = ''] = murmuring(onTestFinished);
  const { chromium, page, origin } = await open([fake, file, ...service.args]);
  const seat = seatAt(page);
  await playSound(page);
  await untilText(seat, 'no voice for English on this computer');
  expect(await faults(page, 'voice-sound-check')).toEqual([]);
  await page.locator('::-p-aria([name="Done"][role="button"])').click();

  await seat.click('.voicemark');
  await untilText(seat, 'Allow');
  expect(await faults(page, 'voice-offered')).toEqual([]);
  await setVoice(chromium, { wish: 'browser' });
  await untilText(seat, 'The browser asks whether');
  expect(await faults(page, 'voice-asking')).toEqual([]);
  const context = chromium.browser.defaultBrowserContext();
  await context.setPermission(origin, { permission: { name: 'microphone' }, state: 'denied' });
  await untilText(seat, 'so voice stays off');
  expect(await faults(page, 'voice-refused')).toEqual([]);
  await setVoice(chromium, { wish: 'own' });
  await context.setPermission(origin, { permission: { name: 'microphone' }, state: 'granted' });
  await untilText(seat, '0 of 7 words are taught.');
  expect(await faults(page, 'voice-teaching')).toEqual([]);
  await setVoice(chromium, { wish: 'browser' });
  await untilMark(seat, 'listening');
  mouth.word = 'solid';
  await untilText(seat, 'Heard “solid”.');
  expect(await faults(page, 'voice-on')).toEqual([]);
});

test('the mark of a sweep listening, deaf, not spoken and with the sound off', async () => {
  const service = await startSpeechService((utterance) => answer(utterance, () => Promise.resolve(null)));
  onTestFinished(service.close);
  const [fake = '', file = ''] = murmuring(onTestFinished);
  const { chromium, page, origin } = await open([fake, file, ...service.args]);
  const seat = seatAt(page);
  const context = chromium.browser.defaultBrowserContext();
  await putUnderWay(chromium, sweepIn('dialling'));
  await untilPhase(seat, 'dialling');
  expect(await faults(page, 'mark-off')).toEqual([]);
  await setVoice(chromium, { speak: false }, false);
  await untilText(seat, 'Tones and speech are both off');
  expect(await faults(page, 'mark-sound-off')).toEqual([]);
  await setVoice(chromium, { listen: 'browser' });
  // In a tab nobody answers the browser's question, which stands for a no.
  await untilMark(seat, 'blocked');
  expect(await faults(page, 'mark-blocked')).toEqual([]);
  await context.setPermission(origin, { permission: { name: 'microphone' }, state: 'granted' });
  await untilMark(seat, 'listening');
  expect(await faults(page, 'mark-listening')).toEqual([]);
  await setVoice(chromium, { listen: 'own' });
  await untilMark(seat, 'no words');
  expect(await faults(page, 'mark-no-words')).toEqual([]);
});

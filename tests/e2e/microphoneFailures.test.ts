// What fails around the microphone while the browser's real recogniser listens, in the real side panel: no verdict that nobody
// said, one sentence that says what to do, keys that work throughout, and listening that comes back by itself.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium, type Chromium } from './chromium.ts';
import { journalOf, verdictsOf } from './journal.ts';
import { answer, murmuring, sayUntil } from './murmuring.ts';
import { choose, press, seatAt, until, untilMark, untilPhase, untilText, type Seat } from './seat.ts';
import { startSpeechService, type Listening } from './speech-service.ts';
import { agreeToListening, beginWith, holdOnce, keys } from './sweeping.ts';

const KIT = { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' };

/** A service that answers with the word it is told, once. */
async function obedient() {
  const told: { word: string | null; most: number } = { word: null, most: 0 };
  const utterances: Listening[] = [];
  const service = await startSpeechService(async (utterance) => {
    utterances.push(utterance);
    told.most = Math.max(told.most, utterances.filter(({ isOver }) => !isOver()).length);
    await answer(utterance, () => {
      const { word } = told;
      told.word = null;
      return Promise.resolve(word);
    });
  });
  onTestFinished(service.close);
  return { told, service };
}

async function launch(args: readonly string[]): Promise<Chromium> {
  const chromium = await launchChromium({ args });
  onTestFinished(chromium.close);
  return chromium;
}

const listening = (seat: Seat) => untilMark(seat, 'listening');

/** Remembers the microphone's real tracks, and can make it seem that there is no microphone any more. */
const watchMicrophone = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const devices = navigator.mediaDevices;
    const open = devices.getUserMedia.bind(devices);
    const watched = globalThis as unknown as { tracks: MediaStreamTrack[]; gone: boolean };
    watched.tracks = [];
    watched.gone = false;
    devices.getUserMedia = async (wanted) => {
      if (watched.gone) throw new DOMException('Requested device not found', 'NotFoundError');
      const stream = await open(wanted);
      watched.tracks.push(...stream.getTracks());
      return stream;
    };
  });

/** The newest track ends, as a track does whose source is gone: a page cannot unplug the browser's fake microphone. */
const endTrack = (page: Page, gone: boolean): Promise<void> =>
  page.evaluate((isGone) => {
    const watched = globalThis as unknown as { tracks: MediaStreamTrack[]; gone: boolean };
    watched.gone = isGone;
    const track = watched.tracks.at(-1);
    track?.stop();
    track?.dispatchEvent(new Event('ended'));
  }, gone);

const plugIn = (page: Page): Promise<void> =>
  page.evaluate(() => {
    (globalThis as unknown as { gone: boolean }).gone = false;
    navigator.mediaDevices.dispatchEvent(new Event('devicechange'));
  });

test('a track that ends is opened again, a microphone that goes is asked for in one sentence, and both times the next word is heard', async () => {
  const { told, service } = await obedient();
  const chromium = await launch([...murmuring(onTestFinished), ...service.args]);
  const page = await chromium.openPanel();
  const seat = seatAt(page);
  await watchMicrophone(page);
  await agreeToListening(seat);
  await beginWith(seat, KIT);
  await listening(seat);

  await endTrack(page, false);
  await holdOnce(seat, () => 'nothing', keys);
  await listening(seat);
  await sayUntil(seat, told, 'holding', 'holding');

  await endTrack(page, true);
  await untilText(seat, 'No microphone answers. Connect one. Listening then begins by itself.');
  await press(seat, 'd');
  await untilPhase(seat, 'dialling');
  await plugIn(page);
  await until(seat, 'the sentence gone', ({ text }) => !text.includes('No microphone answers'));
  await listening(seat);
  await sayUntil(seat, told, 'holding', 'holding');
  await sayUntil(seat, told, 'flicker', 'dialling');
  await expect.poll(() => verdictsOf(chromium)).toEqual(['key dark', 'key late', 'voice flicker']);
});

// Headless, nobody can click the browser's own question; what the person would answer there is given by the driver.
test('a permission that was dismissed in the panel and is granted in the tab opens the ear, and taken away it is asked for again', async () => {
  const { told, service } = await obedient();
  const [fake, file] = murmuring(onTestFinished);
  const chromium = await launch([fake ?? '', file ?? '', ...service.args]);
  const seat = seatAt(await chromium.openPanel());
  await agreeToListening(seat);
  await beginWith(seat, KIT);
  await untilText(seat, 'The browser has not allowed the microphone yet. Allow it. Listening then begins by itself.');
  await holdOnce(seat, () => 'nothing', keys);

  await seat.click('.voicemark');
  const target = await chromium.browser.waitForTarget((one) => one.url().endsWith('/microphone.html#ask'));
  const tab = await target.asPage();
  const origin = `chrome-extension://${chromium.extensionId}`;
  const context = chromium.browser.defaultBrowserContext();
  await context.overridePermissions(origin, ['microphone']);
  await tab.waitForFunction(() => document.body.textContent?.includes('The microphone is allowed.'));
  await listening(seat);
  await sayUntil(seat, told, 'holding', 'holding');
  await sayUntil(seat, told, 'flicker', 'dialling');
  await expect.poll(() => verdictsOf(chromium)).toEqual(['key dark', 'voice flicker']);

  await context.setPermission(origin, { permission: { name: 'microphone' }, state: 'denied' });
  await untilText(seat, 'The microphone is blocked for Sweepbook.');
  await holdOnce(seat, () => 'delayed', keys);
});

test('of two windows on one sweep one listens: a word is heard once, and when the first closes the other one listens', async () => {
  const { told, service } = await obedient();
  const chromium = await launch([...murmuring(onTestFinished), ...service.args]);
  const page = await chromium.openPanel();
  const first = seatAt(page);
  await agreeToListening(first);
  await beginWith(first, KIT);
  await listening(first);
  const second = seatAt(await chromium.openTab());
  await untilText(second, 'A sweep runs in another window');
  await choose(second, 'Follow it');
  await untilText(second, 'Here you can only watch.');
  await page.bringToFront();
  await sayUntil(first, told, 'holding', 'holding');
  await sayUntil(first, told, 'flicker', 'dialling');

  const moved = async () => (await journalOf(chromium)).flatMap(({ did }) => (did === 'heard' ? [] : [did]));
  await expect.poll(moved).toEqual(['opened', 'began', 'judged']);
  await page.close();
  await listening(second);
  await sayUntil(second, told, 'holding', 'holding');
  await expect.poll(moved).toEqual(['opened', 'began', 'judged', 'began']);
  expect(told.most).toBe(1);
});

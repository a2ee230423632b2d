// What may be wrong with the microphone while voice is on, in the real browser: each time the mark says what is so, a sentence
// says what to do, and nothing is lost. What a driver cannot do to a microphone is done to the browser's real track.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { words } from '../../src/words/en/voice.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { answer, murmuring } from './murmuring.ts';
import { look, seatAt, until, untilMark, untilText, type Seat } from './seat.ts';
import { startSpeechService } from './speech-service.ts';
import { agreeToListening, beginWith, holdOnce, keys } from './sweeping.ts';

const KIT = { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' };

async function launch(): Promise<Chromium> {
  const service = await startSpeechService((utterance) => answer(utterance, () => Promise.resolve(null)));
  onTestFinished(service.close);
  const chromium = await launchChromium({ args: [...murmuring(onTestFinished), ...service.args] });
  onTestFinished(chromium.close);
  return chromium;
}

/** From now on the panel's own microphone can be held by another program, or muted where it stands. */
const holdMicrophone = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const devices = navigator.mediaDevices;
    const open = devices.getUserMedia.bind(devices);
    const held = globalThis as unknown as { track?: MediaStreamTrack; inUse: boolean };
    held.inUse = false;
    devices.getUserMedia = async (wanted) => {
      if (held.inUse) throw new DOMException('Could not start audio source', 'NotReadableError');
      const stream = await open(wanted);
      const [track] = stream.getAudioTracks();
      if (track) held.track = track;
      return stream;
    };
  });

const setInUse = (page: Page, inUse: boolean): Promise<void> =>
  page.evaluate((now) => {
    const held = globalThis as unknown as { track?: MediaStreamTrack; inUse: boolean };
    held.inUse = now;
    if (!now) return;
    held.track?.stop();
    held.track?.dispatchEvent(new Event('ended'));
  }, inUse);

const setMuted = (page: Page, muted: boolean): Promise<void> =>
  page.evaluate((now) => {
    const { track } = globalThis as unknown as { track?: MediaStreamTrack };
    if (!track) throw new Error('There is no track.');
    Object.defineProperty(track, 'muted', { value: now, configurable: true });
    track.dispatchEvent(new Event(now ? 'mute' : 'unmute'));
  }, muted);

const topOfSwitch = (seat: Seat): Promise<number | undefined> => seat.evaluate(() => document.querySelector('.switch')?.getBoundingClientRect().top);

test('a microphone that another program takes, or that is muted, in mid-sweep: a sentence, nothing moves, and it is heard again by itself', async () => {
  const chromium = await launch();
  const page = await chromium.openPanel();
  const seat = seatAt(page);
  await holdMicrophone(page);
  await agreeToListening(seat);
  await beginWith(seat, KIT);
  await untilMark(seat, 'listening');
  const before = await topOfSwitch(seat);

  await setMuted(page, true);
  await untilMark(seat, 'muted');
  await untilText(seat, words.deaf.muted);
  expect(await topOfSwitch(seat)).toBe(before);
  await setMuted(page, false);
  await untilMark(seat, 'listening');

  await setInUse(page, true);
  await untilMark(seat, 'in use');
  await untilText(seat, words.deaf['in use']);
  expect(await topOfSwitch(seat)).toBe(before);
  const { next } = await holdOnce(seat, () => 'flicker', keys);
  expect(next.holds).toHaveLength(1);
  await setInUse(page, false);
  await untilMark(seat, 'listening');
  expect((await look(seat)).holds).toHaveLength(1);
});

test('of two windows that try a word one listens; the other says so, and listens in its place at one press', async () => {
  const chromium = await launch();
  const pages = [await chromium.openTab(), await chromium.openTab()] as const;
  const [one, other] = [seatAt(pages[0]), seatAt(pages[1])];
  for (const seat of [one, other]) await until(seat, 'the start', ({ screen }) => screen === 'start');
  const pressMark = async (page: Page): Promise<void> => {
    await page.bringToFront();
    await page.locator('.voicemark').click();
  };
  await pages[0].bringToFront();
  await agreeToListening(one);
  await pressMark(pages[0]);
  await untilMark(one, 'listening');
  await pressMark(pages[1]);
  await untilMark(other, 'another window');
  await untilText(other, words.deaf['another window']);
  await pressMark(pages[1]);
  await untilMark(other, 'listening');
  await untilMark(one, 'another window');
  await pressMark(pages[0]);
  await untilMark(one, 'listening');
  await untilMark(other, 'another window');
  expect((await look(other)).screen).toBe('voice');
});

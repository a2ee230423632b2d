// What the browser's real recogniser may do to a sweep, answered on loopback: results that come late, in pieces or untrusted, a
// network that goes, a recogniser that is refused, cannot start, or is still to be downloaded, and a microphone that is silent.
// What no driver can do to the browser is done to its real object.
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import type { Settings } from '../../src/settings.ts';
import { words as sessionWords } from '../../src/words/en/session.ts';
import { words } from '../../src/words/en/voice.ts';
import { underWay } from './byOwnWords.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { verdictsOf } from './journal.ts';
import { choose, look, press, seatAt, until, untilMark, untilPhase, untilText, type Seat } from './seat.ts';
import type { SpeechMessage } from './speech-message.ts';
import { startSpeechService, type Listening } from './speech-service.ts';
import { microphonePlaying, writeSpeech } from './spoken.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

/** A service that sends what it is told, once, to whatever utterance the browser is in the middle of. */
class Told {
  messages: readonly SpeechMessage[] | null = null;
  now: Listening | null = null;

  readonly answer = async (listening: Listening): Promise<void> => {
    await listening.heard;
    this.now = listening;
    while (!listening.isOver()) {
      const { messages } = this;
      this.messages = null;
      for (const message of messages ?? []) listening.send(message);
      if (messages) break;
      await new Promise((go) => setTimeout(go, 20));
    }
    await listening.close();
  };
}

const final = (transcript: string, confidence = 0.9): SpeechMessage => ({ results: [{ final: true, alternatives: [{ transcript, confidence }] }] });

/** Somebody who talks without a pause, after so many seconds in which nothing at all comes from the microphone. */
function talking(after = 0.1): string[] {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const wav = join(folder, 'talk.wav');
  writeSpeech(wav, [{ after, say: 'solid' }, ...Array.from({ length: 150 }, () => ({ after: 0.02, say: 'solid and so on' }))]);
  return microphonePlaying(wav);
}

interface Sitting {
  readonly told: Told;
  readonly chromium: Chromium;
  readonly page: Page;
  readonly seat: Seat;
}

/** A sweep under way; `before` is done to the page before anything listens. */
async function sit(
  voice: Partial<Settings['voice']>,
  { microphone = talking(), before }: { microphone?: string[]; before?: () => void } = {},
): Promise<Sitting> {
  const told = new Told();
  const service = await startSpeechService(told.answer);
  onTestFinished(service.close);
  const chromium = await launchChromium({ args: [...microphone, ...service.args] });
  onTestFinished(chromium.close);
  const { live, settings } = underWay();
  const quiet: Settings = { ...settings, sound: false, voice: { ...settings.voice, listen: 'browser', learn: false, speak: false, ...voice } };
  await chromium.worker.evaluate((stored) => chrome.storage.local.set(stored), { live, settings: quiet });
  const page = await chromium.openPanel();
  const seat = seatAt(page);
  if (before) await page.evaluate(before);
  return { told, chromium, page, seat };
}

/** An utterance in which the browser has told that something sounds. */
async function soundingUtterance(told: Told, page: Page): Promise<Listening> {
  await page.waitForFunction(() => (globalThis as unknown as { sounding?: boolean }).sounding === true, { polling: 20 });
  if (!told.now || told.now.isOver()) throw new Error('Nothing is being heard.');
  return told.now;
}

/** Runs in the panel: `sounding` tells whether the newest recogniser hears a sound. */
function watchSound(): void {
  const world = globalThis as unknown as { sounding: boolean };
  const start = webkitSpeechRecognition.prototype.start;
  webkitSpeechRecognition.prototype.start = function (this: SpeechRecognition, track?: MediaStreamTrack) {
    world.sounding = false;
    for (const [name, now] of [
      ['soundstart', true],
      ['soundend', false],
    ] as const)
      this.addEventListener(name, () => void (world.sounding = now));
    start.call(this, track);
  };
}

/** Says it until it came to this. */
async function sayUntil({ told, seat }: Sitting, messages: readonly SpeechMessage[], ...phases: readonly string[]): Promise<void> {
  for (let said = 0; said < 12; said++) {
    told.messages = messages;
    const patience = performance.now() + 2500;
    while (performance.now() < patience) {
      if (phases.includes((await look(seat)).phase ?? '')) return;
      await new Promise((go) => setTimeout(go, 50));
    }
  }
  throw new Error(`It never came to ${phases.join(' or ')}: ${JSON.stringify(await look(seat))}`);
}

test('a result that comes when the next hold is under way does not judge it, with speech and tones off, and the screen says why', async () => {
  const { told, chromium, seat, ...sitting } = await sit({}, { before: watchSound });
  await untilMark(seat, 'listening');
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  const sounding = await soundingUtterance(told, sitting.page);
  await press(seat, 'n');
  await untilPhase(seat, 'dialling');
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  sounding.send(final('flicker'));
  await until(seat, 'why it is not taken', ({ lastHeard }) => lastHeard === `flicker \u2192 ${sessionWords.became['too late']}`);
  expect(await look(seat)).toMatchObject({ phase: 'holding', holds: [expect.any(String)] });
  await sayUntil({ told, chromium, seat, ...sitting }, [final('flicker')], 'dialling');
  await expect.poll(() => verdictsOf(chromium)).toEqual(['key dark', 'voice flicker']);
});

test('a network that goes is said at once, and when it is back words are heard at once, without waiting for the next try', async () => {
  const sitting = await sit({});
  const { page, seat, chromium } = sitting;
  await untilMark(seat, 'listening');
  await page.setOfflineMode(true);
  await untilMark(seat, 'no network');
  await untilText(seat, words.deaf['no network']);
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  await page.setOfflineMode(false);
  const back = performance.now();
  await untilMark(seat, 'listening');
  // The next try would come after half a minute.
  expect(performance.now() - back).toBeLessThan(10_000);
  await sayUntil(sitting, [final('flicker')], 'dialling');
  await expect.poll(() => verdictsOf(chromium)).toEqual(['voice flicker']);
});

test('of a result in pieces each counts: other talk first, and then a word', async () => {
  const sitting = await sit({});
  await untilMark(sitting.seat, 'listening');
  const pieces = ['mind the tripod', 'holding'].map((transcript) => ({ final: true, alternatives: [{ transcript, confidence: 0.9 }] }));
  await sayUntil(sitting, [{ results: pieces }], 'holding');
  expect((await look(sitting.seat)).lastHeard).toBe('holding \u2192 hold at 0');
});

test('a word that the recogniser itself does not trust is asked back, and taken when it is said again', async () => {
  const sitting = await sit({});
  const { told, seat } = sitting;
  await untilMark(seat, 'listening');
  told.messages = [final('holding', 0.2)];
  await until(seat, 'the question', ({ lastHeard }) => lastHeard === `holding \u2192 ${sessionWords.became['asked back']}`);
  expect((await look(seat)).phase).toBe('dialling');
  await sayUntil(sitting, [final('holding', 0.2)], 'holding');
});

test.each([
  [6, 'not usable'],
  [8, 'no language'],
] as const)('a recogniser that is refused (status %i) says %s, and one press leads to words of one’s own', async (status, why) => {
  const { told, seat } = await sit({});
  await untilMark(seat, 'listening');
  await until(seat, 'an utterance', () => told.now !== null && !told.now.isOver());
  told.messages = [{ status }];
  await untilMark(seat, why);
  await untilText(seat, words.deaf[why]);
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  await seat.click('.voicemark');
  await untilText(seat, words.sheet.teachInstead);
  await choose(seat, words.sheet.teachInstead);
  expect((await untilText(seat, words.sheet.openLesson)).screen).toBe('voice');
});

/** Runs in the panel: remembers every track, and the recogniser cannot be started while `jammed`. */
function jam(): void {
  const world = globalThis as unknown as { jammed: boolean; tracks: MediaStreamTrack[] };
  world.jammed = true;
  world.tracks = [];
  const start = webkitSpeechRecognition.prototype.start;
  webkitSpeechRecognition.prototype.start = function (this: SpeechRecognition, track?: MediaStreamTrack) {
    if (track) world.tracks.push(track);
    if (world.jammed) throw new DOMException('jammed', 'InvalidStateError');
    start.call(this, track);
  };
}

test('a recogniser that cannot be started leaves no microphone open, and hears as soon as it can be', async () => {
  const sitting = await sit({}, { before: jam });
  const { seat } = sitting;
  await untilMark(seat, 'no service');
  const open = await seat.evaluate(() => (globalThis as unknown as { tracks: MediaStreamTrack[] }).tracks.map(({ readyState }) => readyState));
  expect(open.length).toBeGreaterThan(0);
  expect(open).not.toContain('live');
  await seat.evaluate(() => void ((globalThis as unknown as { jammed: boolean }).jammed = false));
  await untilMark(seat, 'listening');
  await sayUntil(sitting, [final('holding')], 'holding');
  expect((await look(seat)).phase).toBe('holding');
});

/**
 * Runs in the panel: the browser could recognise on this computer after a download, which `here` says how far it is with. No model
 * comes to a test, so the real recogniser goes on asking the service, and really refuses phrases as it does there.
 */
function downloadable(): void {
  const world = globalThis as unknown as { here: string; phrases: number; install: (came: boolean) => void };
  world.here = 'downloadable';
  world.phrases = 0;
  const real = webkitSpeechRecognition as unknown as { available: () => Promise<string>; install: () => Promise<boolean>; prototype: object };
  for (const maker of [real, globalThis.SpeechRecognition as unknown as typeof real | undefined]) {
    if (!maker) continue;
    maker.available = () => Promise.resolve(world.here);
    maker.install = () => {
      world.here = 'downloading';
      return new Promise((done) => {
        world.install = done;
      });
    };
  }
  Object.defineProperty(real.prototype, 'processLocally', { value: false, writable: true });
  const own = Object.getOwnPropertyDescriptor(real.prototype, 'phrases');
  Object.defineProperty(real.prototype, 'phrases', {
    get: () => own?.get?.call(real.prototype) as unknown,
    set(given: readonly object[]) {
      world.phrases = given.length;
      own?.set?.call(this, given);
    },
  });
}

test('what has to be downloaded is offered, told while it comes, and heard with by itself, told of the words of the moment', async () => {
  const sitting = await sit({ listen: 'here' }, { before: downloadable });
  const { seat } = sitting;
  await untilMark(seat, 'to be downloaded');
  await seat.click('.voicemark');
  await untilText(seat, words.deaf['to be downloaded']);
  await choose(seat, words.sheet.download);
  await untilMark(seat, 'being downloaded');
  expect(await seat.evaluate(() => document.querySelector('progress')?.getAttribute('aria-label'))).toBe(words.sheet.downloading);
  await seat.evaluate(() => {
    const world = globalThis as unknown as { here: string; install: (came: boolean) => void };
    world.here = 'available';
    world.install(true);
  });
  await untilMark(seat, 'listening');
  expect(await seat.evaluate(() => (globalThis as unknown as { phrases: number }).phrases)).toBeGreaterThan(0);
  await choose(seat, words.sheet.toSweep);
  await sayUntil(sitting, [final('resume')], 'dialling');
  expect((await look(seat)).phase).toBe('dialling');
});

test('a microphone from which nothing at all comes says so, and is heard again by itself', async () => {
  const sitting = await sit({}, { microphone: talking(9) });
  const { seat } = sitting;
  await untilMark(seat, 'silent');
  await untilText(seat, words.deaf.silent);
  await untilMark(seat, 'listening');
  await sayUntil(sitting, [final('holding')], 'holding');
  expect((await look(seat)).phase).toBe('holding');
});

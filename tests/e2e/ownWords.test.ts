// A whole sweep by words the person taught, in a room with echo and a fan: a real microphone as the browser sees it, the real
// sound graph, the real recogniser and the real panel. Nothing leaves the browser meanwhile. Each browser has a computer's
// sound of its own, so the two sweeps run side by side.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test, type TestContext } from 'vitest';
import type { Journal } from '../../src/sweep/event.ts';
import { replay } from '../../src/sweep/transition.ts';
import { eye, putTaught, sweepByVoice, TAUGHT, underWay, wordsLearned } from './byOwnWords.ts';
import { launchChromium } from './chromium.ts';
import { launchFirefox } from './firefox.ts';
import { journalAt, journalOf } from './journal.ts';
import { seatAt, seatAtSidebar, untilMark, type Seat } from './seat.ts';
import { enterRoom, type VoiceInRoom } from './voiceInRoom.ts';

async function enter(voice: string, seed: number, { onTestFinished }: TestContext) {
  const entered = await enterRoom(voice, seed, onTestFinished);
  return { ...entered, takes: TAUGHT.flatMap((word) => entered.person.teach(word)) };
}

async function speak(seat: Seat, person: VoiceInRoom): Promise<void> {
  person.fan();
  await untilMark(seat, 'listening');
  await sweepByVoice(seat, (word) => person.say(word));
}

const LIGHT = { solid: 'steady', delayed: 'late', flicker: 'flicker', nothing: 'dark' } as const;

/** How the sweep stands, verdicts that differ from what the eye saw, and events that did not come by voice. */
async function whatCameOf(live: Journal) {
  const { holds, phase } = replay(live);
  const seen = await Promise.all(holds.map(({ value }) => eye(value)));
  return {
    phase: phase.name,
    wrong: holds.filter(({ verdict }, index) => verdict.light !== LIGHT[seen[index] ?? 'solid']),
    otherwise: live.filter((event) => 'by' in event && event.by !== 'voice'),
  };
}
const AS_SAID = { phase: 'finished', wrong: [], otherwise: [] };

test.concurrent(
  'in Chromium taught words alone run a sweep at 20 dB over the noise, and nothing leaves the browser',
  async (context) => {
    const { folder, sound, person, takes } = await enter('en-gb+f2', 12, context);
    const traffic = join(folder, 'traffic.json');
    const chromium = await launchChromium({ env: sound.env, args: ['--use-fake-ui-for-media-stream', `--log-net-log=${traffic}`] });
    let closed = false;
    context.onTestFinished(() => (closed ? undefined : chromium.close()));
    const page = await chromium.openTab('microphone.html');
    await page.evaluate(putTaught, takes);
    await chromium.worker.evaluate((stored) => chrome.storage.local.set(stored), underWay());
    await speak(seatAt(await chromium.openPanel()), person);
    await context.expect.poll(async () => whatCameOf(await journalOf(chromium))).toEqual(AS_SAID);
    await context.expect.poll(() => page.evaluate(wordsLearned)).toEqual(expect.arrayContaining(['holding', 'solid']));
    closed = true;
    await chromium.close();
    // The browser's own errands (its clock, its updates) are not the extension's; the speech service and whatever a page of the
    // extension asked for would be.
    const log = readFileSync(traffic, 'utf8');
    const asked = [...log.matchAll(/"initiator":"([^"]*)"[^\n]*?"url":"(https?:[^"]*)"/g)];
    expect(asked.length).toBeGreaterThan(0);
    expect(asked.flatMap(([, initiator = '', url = '']) => (initiator.includes('extension') ? [url] : []))).toEqual([]);
    expect(log).not.toContain('speech-api');
  },
  240_000,
);

test.concurrent(
  'in Firefox, which has no recogniser of its own, taught words alone run a sweep in its sidebar',
  async (context) => {
    const { sound, person, takes } = await enter('en-us+m3', 13, context);
    const firefox = await launchFirefox({ env: sound.env, prefs: { 'media.navigator.permission.disabled': true } });
    context.onTestFinished(firefox.close);
    const sidebar = await firefox.openSidebar();
    await sidebar.waitFor(() => document.querySelector('main')?.dataset['screen'] === 'start');
    await sidebar.evaluate(putTaught, takes);
    await sidebar.evaluate((stored) => browser.storage.local.set(stored), underWay());
    await sidebar.click('h1');
    const seat = seatAtSidebar(sidebar);
    await speak(seat, person);
    await context.expect.poll(async () => whatCameOf(await journalAt(seat))).toEqual(AS_SAID);
    await context.expect.poll(() => sidebar.evaluate(wordsLearned)).toEqual(expect.arrayContaining(['holding', 'solid']));
  },
  240_000,
);

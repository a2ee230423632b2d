// Firefox has no recogniser of its own, so what its sidebar hears are taught words: a word that was begun in one hold never judges
// the next, and a network that goes changes nothing.
import { expect, onTestFinished, test } from 'vitest';
import { words as sessionWords } from '../../src/words/en/session.ts';
import { putTaught, TAUGHT, underWay } from './byOwnWords.ts';
import { firefoxWindow } from './firefox-window.ts';
import { launchFirefox } from './firefox.ts';
import { journalAt } from './journal.ts';
import { look, press, seatAtSidebar, untilMark, untilPhase, type Seat } from './seat.ts';
import { enterRoom } from './voiceInRoom.ts';

async function sit() {
  const { person, sound } = await enterRoom('en-us+m3', 13, onTestFinished);
  const takes = TAUGHT.flatMap((word) => person.teach(word));
  const firefox = await launchFirefox({ env: sound.env, prefs: { 'media.navigator.permission.disabled': true } });
  onTestFinished(firefox.close);
  const sidebar = await firefox.openSidebar();
  await sidebar.waitFor(() => document.querySelector('main')?.dataset['screen'] === 'start');
  await sidebar.evaluate(putTaught, takes);
  const { live, settings } = underWay();
  await sidebar.evaluate((stored) => browser.storage.local.set(stored), { live, settings: { ...settings, sound: false } });
  await sidebar.click('h1');
  const seat = seatAtSidebar(sidebar);
  person.fan();
  await untilMark(seat, 'listening');
  return { firefox, person, seat };
}

/** One after the other, as fast as a hand can. */
async function judgeAndBegin(seat: Seat): Promise<void> {
  await press(seat, 'n');
  await untilPhase(seat, 'dialling');
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
}

/** How often a word and a press are tried to fall into each other, and how long the word sounds before it. */
const TIMES = 10;
const UNDER_WAY = 450;

test('a taught word that was begun in one hold does not judge the next, and the screen says why', async () => {
  const { person, seat } = await sit();
  const late = `flicker \u2192 ${sessionWords.became['too late']}`;
  let last = '';
  for (let tried = 0; tried < TIMES && last !== late; tried++) {
    await untilPhase(seat, 'dialling');
    await press(seat, ' ');
    await untilPhase(seat, 'holding');
    const said = person.say('flicker');
    await new Promise((go) => setTimeout(go, UNDER_WAY));
    // Where the sound server is slow, the word is begun in the next hold, and is its own.
    await judgeAndBegin(seat);
    await said;
    await new Promise((go) => setTimeout(go, 1200));
    ({ lastHeard: last } = await look(seat));
    if ((await look(seat)).phase === 'holding' && last !== late) await press(seat, 'n');
  }
  expect(last).toBe(late);
  await expect.poll(async () => (await journalAt(seat)).at(-1)).toMatchObject({ did: 'heard', became: 'other' });
  expect((await look(seat)).phase).toBe('holding');
}, 120_000);

test('taught words are heard without a network', async () => {
  const { firefox, person, seat } = await sit();
  const window = await firefoxWindow(firefox.browser);
  await window.call('() => { Services.io.offline = true; }');
  expect(await seat.evaluate(() => navigator.onLine)).toBe(false);
  await untilMark(seat, 'listening');
  for (let said = 0; said < TIMES && (await look(seat)).phase === 'dialling'; said++) {
    await person.say('holding');
    await new Promise((go) => setTimeout(go, 1200));
  }
  await expect.poll(async () => (await journalAt(seat)).find(({ did }) => did === 'began')).toMatchObject({ by: 'voice' });
}, 120_000);

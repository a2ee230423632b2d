// A whole sweep by words the person taught: a fake microphone in a noisy room, the real sound graph and the real panel.
// Nothing leaves the browser meanwhile.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { USUAL_SETTINGS, type Settings } from '../../src/settings.ts';
import type { Journal, SweepEvent } from '../../src/sweep/event.ts';
import { USUAL_MANNER } from '../../src/sweep/plan.ts';
import { replay, transition } from '../../src/sweep/transition.ts';
import { millimetres, moment, seconds } from '../../src/units.ts';
import { TakeRecording } from '../../src/voice/ownWords/recordTake.ts';
import { takeOf, type Take } from '../../src/voice/ownWords/take.ts';
import { opened } from '../sweep/staged.ts';
import { launchChromium } from './chromium.ts';
import { seatAt, until } from './seat.ts';
import { heardInRoom, microphonePlaying, rate, writeSpeechInRoom, type Utterance } from './spoken.ts';
import { steadyEye } from './sweeping.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

const WORDS = ['holding', 'solid', 'delayed', 'flicker', 'nothing', 'undo', 'accept', 'repeat', 'skip', 'pause'];
/** About 25 dB under the voice. */
const ROOM = 0.01;
/** Said with the tempo and pitch of the same person on another day. */
const MANNERS = [
  { pace: 130, pitch: 46 },
  { pace: 136, pitch: 50 },
  { pace: 142, pitch: 54 },
  { pace: 148, pitch: 48 },
  { pace: 154, pitch: 52 },
] as const;

function taught(word: string): Take[] {
  return MANNERS.map((manner) => {
    const take = new TakeRecording(rate).push(heardInRoom({ after: 1, say: word, ...manner }, ROOM));
    if (!take?.stretch) throw new Error(`“${word}” was not heard.`);
    return takeOf(word, take.stretch);
  });
}

const manner = { ...USUAL_MANNER, care: 'quick' as const, holdTime: seconds(3) };
const subject = { situation: 'orrin', body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: millimetres(85), distance: millimetres(4250) };

/** What a person says from the first hold to the accepted finish, when every word is heard. */
function script(journal: Journal): { said: Utterance[]; verdicts: string[] } {
  const eye = steadyEye(2, 8);
  const said: Utterance[] = [];
  const verdicts: string[] = [];
  let state = replay(journal);
  const did = (event: SweepEvent): void => {
    state = transition(state, event).state;
  };
  for (let at = 1; state.phase.name === 'dialling'; at += 10_000) {
    const { value } = state.phase.next;
    const word = eye(value) as 'solid' | 'delayed' | 'flicker' | 'nothing';
    const light = ({ solid: 'steady', delayed: 'late', flicker: 'flicker', nothing: 'dark' } as const)[word];
    const held = word === 'solid';
    did({ did: 'began', at: moment(at), value, by: 'voice' });
    if (held) did({ did: 'ran', at: moment(at + 3000) });
    did({ did: 'judged', at: moment(at + 4000), verdict: { light, arrows: 'none' }, by: 'voice', heard: word });
    said.push({ after: said.length === 0 ? 4 : 1.8, say: 'holding', pace: 140, pitch: 51 }, { after: held ? 5 : 1.8, say: word, pace: 140, pitch: 51 });
    verdicts.push(`${value} ${light}`);
  }
  said.push({ after: 2.5, say: 'accept', pace: 140, pitch: 51 });
  return { said, verdicts };
}

test('taught words alone run a sweep in a noisy room, each verdict as it was said, and nothing leaves the browser', async () => {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const opening = { ...opened({ subject, arrows: 'absent', practice: null, manner }), at: moment(Date.now()) };
  const { said, verdicts } = script([opening]);
  const [wav, traffic] = [join(folder, 'said.wav'), join(folder, 'traffic.json')];
  writeSpeechInRoom(wav, said, ROOM);
  const chromium = await launchChromium({ args: [...microphonePlaying(wav), `--log-net-log=${traffic}`] });
  let closed = false;
  onTestFinished(() => (closed ? undefined : chromium.close()));
  const teaching = await chromium.openTab('microphone.html');
  await teaching.evaluate(
    (own) =>
      new Promise<void>((done, failed) => {
        const asked = indexedDB.open('sweepbook-words');
        asked.addEventListener('upgradeneeded', () => asked.result.createObjectStore('own'));
        asked.addEventListener('error', () => failed(new Error('no database')));
        asked.addEventListener('success', () => {
          const change = asked.result.transaction('own', 'readwrite');
          change.objectStore('own').put(own, 'taught');
          change.addEventListener('complete', () => {
            asked.result.close();
            done();
          });
        });
      }),
    { version: 1, language: 'en-US', takes: WORDS.flatMap(taught) },
  );
  const settings: Settings = { ...USUAL_SETTINGS, manner, voice: { ...USUAL_SETTINGS.voice, listen: 'own', speak: false } };
  await chromium.worker.evaluate((stored) => chrome.storage.local.set(stored), { live: [opening], settings });

  const seat = seatAt(await chromium.openPanel());
  await until(seat, 'the ear open', ({ text }) => text.includes('listening'));
  const length = said.reduce((sum, { after }) => sum + after + 0.7, 0);
  await until(seat, 'the accepted finish', ({ phase }) => phase === 'finished', (length + 15) * 1000);

  const { live } = (await chromium.worker.evaluate(() => chrome.storage.local.get('live'))) as { live: SweepEvent[] };
  const judged = live.flatMap((event) => (event.did === 'judged' ? [event.verdict.light] : []));
  expect(judged).toEqual(verdicts.map((one) => one.split(' ')[1]));
  expect(live.flatMap((event) => ('by' in event && event.by !== 'voice' ? [event] : []))).toEqual([]);
  expect(live.filter(({ did }) => did === 'heard').length).toBeGreaterThanOrEqual(said.length);
  closed = true;
  await chromium.close();
  // The browser's own errands (its clock, its updates) are not the extension's; the speech service and whatever a page of the
  // extension asked for would be.
  const log = readFileSync(traffic, 'utf8');
  const asked = [...log.matchAll(/"initiator":"([^"]*)"[^\n]*?"url":"(https?:[^"]*)"/g)];
  expect(asked.length).toBeGreaterThan(0);
  expect(asked.flatMap(([, initiator = '', url = '']) => (initiator.includes('extension') ? [url] : []))).toEqual([]);
  expect(log).not.toContain('speech-api');
}, 240_000);

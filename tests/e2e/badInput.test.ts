// What may go wrong around a sweep: each time one clear sentence, nothing lost, and the keys still work.
import { expect, onTestFinished, test } from 'vitest';
import { fillUp, withCeiling } from './ceiling.ts';
import { launchChromium, type Chromium, type ChromiumOptions } from './chromium.ts';
import { untilEndsWith } from './journal.ts';
import { choose, press, seatAt, until, untilPhase, untilText, type Look, type Seat } from './seat.ts';
import { agreeToListening, beginWith, holdOnce, keys, type Word, toTheStart } from './sweeping.ts';
import { putUnderWay, sweepIn } from './underWay.ts';

const KIT = { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' };

async function launch(options: ChromiumOptions = {}): Promise<Chromium> {
  const chromium = await launchChromium(options);
  onTestFinished(chromium.close);
  return chromium;
}

const hold = async (seat: Seat, word: Word): Promise<Look> => (await holdOnce(seat, () => word, keys)).next;
/** In px from the top of the panel: nothing may move under the finger. */
const topOfSwitch = (seat: Seat): Promise<number | undefined> => seat.evaluate(() => document.querySelector('.switch')?.getBoundingClientRect().top);
const stored = ({ worker }: Chromium): Promise<Record<string, unknown>> => worker.evaluate(() => chrome.storage.local.get(null));

test('a stored record that does not fit is set aside whole and told in one sentence, and everything else is used', async () => {
  const chromium = await launch();
  const first = await chromium.openPanel();
  await beginWith(seatAt(first), KIT);
  await hold(seatAt(first), 'flicker');
  await press(seatAt(first), 'x');
  await untilPhase(seatAt(first), 'finished');
  await toTheStart(seatAt(first));
  await expect.poll(async () => Object.keys(await stored(chromium)).filter((key) => key.startsWith('record:'))).toHaveLength(1);
  await first.close();
  const spoilt = { id: 'b7', finished: 'last Tuesday', outcome: { found: 'treasure' } };
  await chromium.worker.evaluate((record) => chrome.storage.local.set({ 'record:b7': record }), spoilt);

  const seat = seatAt(await chromium.openTab());
  const { text } = await untilText(seat, 'It is kept whole under');
  expect(text).toContain('Something stored under “record:b7” cannot be used');
  await expect.poll(async () => (await stored(chromium))['record:b7']).toBeUndefined();
  expect(Object.entries(await stored(chromium)).filter(([key]) => key.startsWith('set-aside:record:b7:'))).toEqual([[expect.any(String), spoilt]]);
  await choose(seat, 'Logbook');
  await untilText(seat, '1 found');
});

test('when the storage is full a sentence says so, the sweep goes on by keys, and all of it is stored once there is room', async () => {
  const chromium = await launch({ extension: withCeiling() });
  const page = await chromium.openPanel();
  const seat = seatAt(page);
  await beginWith(seat, KIT);
  await hold(seat, 'flicker');
  await fillUp(chromium.worker, 20);
  await hold(seat, 'nothing');
  await untilText(seat, 'Nothing can be saved just now (');
  const { text, holds } = await hold(seat, 'delayed');
  expect(text).toContain('Leave this panel open and free some space on the disk');
  expect(holds).toHaveLength(3);

  await chromium.worker.evaluate(() => chrome.storage.local.remove('filler'));
  await choose(seat, 'Try now');
  await until(seat, 'the trouble gone', (seen) => !seen.text.includes('Nothing can be saved'));
  await page.close();
  const again = seatAt(await chromium.openTab());
  expect(await until(again, 'three holds', (seen) => seen.holds.length > 0)).toMatchObject({ phase: 'dialling', holds });
});

test('without a microphone a sentence says what to connect, and the keys run the sweep', async () => {
  const chromium = await launch({ args: ['--use-fake-ui-for-media-stream', '--disable-audio-input'] });
  const seat = seatAt(await chromium.openPanel());
  await agreeToListening(seat);
  await beginWith(seat, KIT);
  await untilText(seat, 'No microphone answers. Connect one');
  expect((await hold(seat, 'flicker')).holds).toHaveLength(1);
});

test('where the panel may not ask for the microphone it offers the page that may, and the keys run the sweep', async () => {
  const chromium = await launch({ args: ['--use-fake-device-for-media-stream'] });
  const seat = seatAt(await chromium.openPanel());
  await agreeToListening(seat);
  await beginWith(seat, KIT);
  await untilText(seat, 'The browser has not allowed the microphone yet. Allow it. Listening then begins by itself.');
  expect((await hold(seat, 'flicker')).holds).toHaveLength(1);
  await seat.click('.voicemark');
  const page = await chromium.browser.waitForTarget((target) => target.url().endsWith('/microphone.html#ask'));
  expect(page.type()).toBe('page');
});

test('with no voice on the computer a sentence says so, nothing moves, and every prompt is still shown', async () => {
  // A stock Chromium on Linux has none unless it is told to use the system's speech dispatcher.
  const chromium = await launch();
  const seat = seatAt(await chromium.openPanel());
  await beginWith(seat, KIT);
  const before = await topOfSwitch(seat);
  await untilText(seat, 'The browser finds no voice for English on this computer, so everything is shown, with tones, but not spoken.');
  expect(await topOfSwitch(seat)).toBe(before);
  expect((await hold(seat, 'nothing')).announcement).toMatch(/^Nothing\. Set /);
  expect(await seat.evaluate(() => document.querySelector('.voicemark')?.textContent?.trim())).toBe('voice off not spoken');
});

test('a panel that was closed in the middle of a hold asks for that hold again and has all the others', async () => {
  const chromium = await launch();
  await putUnderWay(chromium, sweepIn('dialling'));
  const page = await chromium.openPanel();
  const { holds, value } = await hold(seatAt(page), 'delayed');
  await press(seatAt(page), ' ');
  await untilPhase(seatAt(page), 'holding');
  await untilEndsWith(chromium, 'began');
  await page.close();

  const again = seatAt(await chromium.openTab());
  const back = await until(again, 'the prompt', ({ announcement }) => announcement.startsWith('The hold was cut off'));
  expect(back.announcement).toContain('so it does not count.');
  expect(await until(again, 'the holds', (seen) => seen.holds.length > 0)).toMatchObject({ holds, value, phase: 'dialling' });
  expect((await hold(again, 'flicker')).holds).toHaveLength(2);
});

// Contract of the bench and its set-up walk in a real Chromium: the whole walk is done by keys, by one switch and by words
// alone, what was ticked and read lies with the sweep, and no screen has a fault in either theme.
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium, type Chromium } from './chromium.ts';
import { faults } from './faults.ts';
import { benchIn, journalOf } from './journal.ts';
import { choose, look, press, seatAt, tabTo, type, until, untilPhase, untilText, type Seat } from './seat.ts';
import { startSpeechService } from './speech-service.ts';
import { microphonePlaying, writeSpeech } from './spoken.ts';
import { agreeToListening } from './sweeping.ts';
import { double, long, pedal, short } from './switching.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';
import { NEW_LENS, stepNow, stepsInAll, untilBench, untilStep } from './walking.ts';

const storedBench = async (chromium: Chromium) => benchIn(await journalOf(chromium));

/** More of the bench than the walk needs, to be looked at, room by room. */
const IN_USE = {
  Target: [['Printed scale measures, mm', '96']],
  Light: [
    ['ISO', '100'],
    ['Aperture', '2.8'],
    ['Shutter', '1/30'],
  ],
  Squareness: [['Reflection off the middle, pixels', '90']],
  'Ramp, and depth on purpose': [
    ['Number at the sharpest line of the ramp', '-12'],
    ['Share of the depth in front, %', '66'],
  ],
} as const;

test('by keys alone: the bench is reckoned, readings are entered, every step is walked, and the sweep has it', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilBench(seat);
  for (const [room, fields] of Object.entries(IN_USE)) {
    await choose(seat, room);
    for (const [field, typed] of fields) {
      await tabTo(seat, field);
      await type(seat, typed);
    }
  }
  await untilText(seat, 'The print came out at 96%');
  expect(await faults(page, 'bench')).toEqual([]);
  await choose(seat, 'Walk through the set-up');
  await untilStep(seat, 1);
  const all = await stepsInAll(seat);
  expect(all).toBeGreaterThan(12);
  await tabTo(seat, 'Correction stored now');
  await type(seat, '-3');
  await choose(seat, 'Keep this reading');
  await untilText(seat, 'Correction stored before: \u22123');
  await press(seat, 'n');
  await untilStep(seat, 2);
  await press(seat, 'b');
  await untilStep(seat, 1);
  await press(seat, 'n');
  const found: string[] = [];
  for (let step = 2; step <= all; step += 1) {
    await untilStep(seat, step);
    const { text, announcement } = await look(seat);
    expect(announcement).not.toBe('');
    if (text.includes('ISO')) {
      await choose(seat, 'Keep this reading');
      await untilText(seat, 'Kept. Light: EV');
      found.push(...(await faults(page, 'walk-light')));
    }
    await press(seat, 'n');
  }
  await untilText(seat, 'Ready for the first hold.');
  expect([...found, ...(await faults(page, 'walk-done'))]).toEqual([]);
  await press(seat, 'Enter');
  await untilPhase(seat, 'dialling');
  await expect.poll(async () => (await storedBench(chromium))?.ticked).toHaveLength(all);
  const kept = ['print', 'light', 'mirror', 'placement', 'old value'].map((reads) => ({ reads }));
  expect((await storedBench(chromium))?.readings).toMatchObject(kept);
});

test('by one switch alone: short goes on, twice goes back, long says it again, from the sweep\u2019s own start', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const seat = seatAt(await chromium.openPanel());
  await untilBench(seat);
  await seat.click('[aria-label="Back"]');
  await until(seat, 'the start', ({ screen }) => screen === 'start');
  await choose(seat, NEW_LENS);
  await untilPhase(seat, 'dialling');
  await choose(seat, 'Set up the bench');
  await untilText(seat, 'Depth of field');
  await choose(seat, 'Walk through the set-up');
  await untilStep(seat, 1);
  const all = await stepsInAll(seat);
  const one = pedal(seat, 'PageDown');
  await short(one);
  await untilStep(seat, 2);
  await double(one);
  await untilStep(seat, 1);
  await long(one);
  expect(await stepNow(seat)).toBe(1);
  for (let step = 1; step <= all; step += 1) {
    await untilStep(seat, step);
    await short(one);
  }
  await untilText(seat, 'Ready for the first hold.');
  await short(one);
  await untilPhase(seat, 'dialling');
  await expect.poll(async () => (await storedBench(chromium))?.ticked).toHaveLength(all);
});

test('by words alone: next, back and repeat walk to the end', async () => {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const wav = join(folder, 'murmur.wav');
  writeSpeech(
    wav,
    Array.from({ length: 90 }, () => ({ after: 0.6, say: 'next' })),
  );
  let seat: Seat | null = null;
  const said: string[] = [];
  const service = await startSpeechService(async ({ heard, send, isOver, close }) => {
    await heard;
    while (!isOver()) {
      const step = seat === null ? 0 : await stepNow(seat);
      if (step === 0) {
        await new Promise((go) => setTimeout(go, 50));
        continue;
      }
      const word = step === 2 && !said.includes('back') ? 'back' : step === 3 && !said.includes('repeat') ? 'repeat' : 'next';
      said.push(word);
      send({ results: [{ final: true, alternatives: [{ transcript: word, confidence: 0.9 }] }] });
      break;
    }
    await close();
  });
  onTestFinished(service.close);
  const chromium = await launchChromium({ args: [...microphonePlaying(wav), ...service.args] });
  onTestFinished(chromium.close);
  const mine = seatAt(await chromium.openPanel());
  await agreeToListening(mine);
  await untilBench(mine);
  await choose(mine, 'Walk through the set-up');
  await untilStep(mine, 1);
  seat = mine;
  const all = await stepsInAll(mine);
  for (let step = 2; step <= all; step += 1) await until(mine, `step ${step}`, ({ text }) => text.includes(`Step ${step} of`) || text.includes('Ready for'));
  await untilText(mine, 'Ready for the first hold.');
  expect(said).toEqual(expect.arrayContaining(['next', 'back', 'repeat']));
}, 180_000);

// The main job by keyboard alone, in the real side panel: a kit typed in, a sweep to its accepted outcome, and the result
// found again when the browser was closed in between.
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { choose, look, press, seatAt, tabTo, type, until, untilPhase } from './seat.ts';
import { beginWith, holdOnce, keys, shortenHolds, steadyEye, sweep, untilFound, toTheStart, untilStart } from './sweeping.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

const VELDE = { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' };

test('a sweep of typed kit ends at the middle of the band, and typing part of the lens finds it after a restart', async () => {
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  const evening = await launchChromium({ profile });
  const seat = seatAt(await evening.openPanel());
  await shortenHolds(seat);
  await beginWith(seat, VELDE);
  await sweep(seat, steadyEye(-2, 8), keys);
  expect((await look(seat)).announcement).toContain('+3');
  await press(seat, 'a');
  expect(await untilFound(seat)).toBe(3);
  await evening.close();

  const morning = await launchChromium({ profile });
  onTestFinished(morning.close);
  const again = seatAt(await morning.openPanel());
  await until(again, 'the outcome or the start', ({ screen }) => screen === 'sweep' || screen === 'start');
  if ((await look(again)).screen === 'sweep') await toTheStart(again);
  await untilStart(again);
  await choose(again, 'Logbook');
  await tabTo(again, 'Find a body, lens, focal length or distance');
  await type(again, 'orr 85');
  const { text } = await until(again, 'one entry', (seen) => seen.text.includes('1 found'));
  expect(text).toContain('+3Orrin 85 f/1.885 mm at 4.25 m · Velde M1');
  await type(again, ' wide');
  await until(again, 'nothing found', (seen) => seen.text.includes('0 found'));
});

test('“steady” before the time is up is refused with the seconds left while the hold goes on, and undo takes the last verdict back', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const seat = seatAt(await chromium.openPanel());
  await beginWith(seat, VELDE);

  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  await press(seat, 's');
  const refused = await until(seat, 'the refusal', ({ announcement }) => announcement.startsWith('Not yet'));
  expect(refused.announcement).toMatch(/^Not yet: hold for [5432] more seconds\.$/);
  expect(refused.lastHeard).toContain(refused.announcement);
  expect(refused).toMatchObject({ phase: 'holding', holds: [] });

  await untilPhase(seat, 'judging');
  await press(seat, 's');
  const first = await until(seat, 'the first hold', ({ holds }) => holds.length === 1);
  const second = await holdOnce(seat, () => 'flicker', keys);
  expect(second.next.holds).toEqual([...first.holds, expect.stringContaining('flickering: outside')]);

  await press(seat, 'u');
  const back = await until(seat, 'one hold less', ({ holds }) => holds.length === 1);
  expect(back).toMatchObject({ phase: 'dialling', holds: first.holds, value: second.value });
  expect(back.lastHeard).toContain('taken back');
});

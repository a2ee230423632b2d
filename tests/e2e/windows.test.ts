// Two panels on one sweep: the side panel and a tab. One runs it, the other shows it and can do nothing to it until the
// first one closes, or until the person takes the sweep over.
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { journalOf, untilEndsWith } from './journal.ts';
import { choose, look, press, seatAt, until, untilPhase, untilText } from './seat.ts';
import { beginWith, holdOnce, keys } from './sweeping.ts';

const KIT = { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' };

test('a second panel follows the sweep read-only, each event is in the journal once, and it goes on with it when the first closes', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openPanel();
  const owner = seatAt(page);
  await beginWith(owner, KIT);
  await holdOnce(owner, () => 'flicker', keys);

  const follower = seatAt(await chromium.openTab());
  await untilText(follower, 'A sweep runs in another window');
  await choose(follower, 'Follow it');
  await untilText(follower, 'Another window runs this sweep. Here you can only watch.');
  const before = await untilEndsWith(chromium, 'judged');
  for (const key of [' ', 'f', 'u', 'x', 'p']) await press(follower, key);
  await page.bringToFront();
  const { next } = await holdOnce(owner, () => 'nothing', keys);
  const seen = await until(follower, 'the second hold', ({ holds }) => holds.length === 2);
  expect(seen).toMatchObject({ holds: next.holds, value: next.value, phase: 'dialling' });
  const added = (await journalOf(chromium)).slice(before.length);
  expect(added.map(({ did }) => did)).toEqual(['began', 'judged']);

  await press(owner, ' ');
  await untilPhase(follower, 'holding');
  await untilEndsWith(chromium, 'began');
  await page.close();
  const taken = await until(follower, 'the sweep to run here', ({ text }) => text.includes('begin the hold'));
  expect(taken).toMatchObject({ phase: 'dialling', holds: next.holds, value: next.value });
  await untilEndsWith(chromium, 'began', 'cut off');

  const third = await holdOnce(follower, () => 'delayed', keys);
  expect(third.next.holds).toHaveLength(3);
  await press(follower, 'x');
  await untilPhase(follower, 'finished');
});

test('taking over moves the sweep to this panel, and the other one follows', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const first = seatAt(await chromium.openPanel());
  await beginWith(first, KIT);
  const page = await chromium.openTab();
  const second = seatAt(page);
  await untilText(second, 'A sweep runs in another window');
  await choose(second, 'Follow it');
  await choose(second, 'Take over here');
  await untilText(first, 'Here you can only watch.');
  await until(second, 'the sweep to run here', ({ text }) => text.includes('begin the hold'));

  await press(first, ' ');
  const { next } = await holdOnce(second, () => 'delayed', keys);
  expect((await until(first, 'the hold', ({ holds }) => holds.length === 1)).holds).toEqual(next.holds);
  expect((await journalOf(chromium)).map(({ did }) => did)).toEqual(['opened', 'began', 'judged']);
  expect((await look(first)).text).toContain('Here you can only watch.');
});

// A practice camera with something wrong, in the real side panel, by keys: the trouble is named with its checks and its odds
// when the finish is offered, and at the end; those screens have no fault at either width in either theme.
import { expect, onTestFinished, test } from 'vitest';
import { replay } from '../../src/sweep/transition.ts';
import { words } from '../../src/words/en/trouble.ts';
import { launchChromium } from './chromium.ts';
import { faults } from './faults.ts';
import { journalOf } from './journal.ts';
import { choose, press, seatAt, tabTo, until, untilPhase, untilText } from './seat.ts';
import { holdOnce, keys, practiceEye, untilStart } from './sweeping.ts';
import { gapSweep, oddSweep, putUnderWay } from './underWay.ts';

test('a light that stays dark at every value is named dark everywhere, and a gap in the band by its values, each with its checks', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  await choose(seat, 'Practice camera');
  await tabTo(seat, 'Something is wrong with it: find out what');
  await press(seat, ' ');
  expect(await faults(page, 'start-practice-odd')).toEqual([]);

  await putUnderWay(chromium, oddSweep(7, 'never lights'));
  // Two holds are watched to the end; after that the person has seen enough to tell it at once.
  let phase = (await untilPhase(seat, 'dialling')).phase;
  for (let hold = 1; phase === 'dialling'; hold += 1) ({ phase } = (await holdOnce(seat, hold <= 2 ? practiceEye(seat) : () => 'nothing', keys)).next);
  const offered = await untilText(seat, 'values looked the same');
  expect(offered.phase).toBe('offered');
  expect(offered.announcement).toContain('The light never comes on. Accept it, or go on?');
  expect(offered.text).toMatch(/active point lies on the target.*All 8 values looked the same\. Odds against any band: /);
  const journal = await journalOf(chromium);
  const [trouble] = replay(journal).troubles;
  expect(trouble?.bayesFactor).toBeGreaterThan(50);
  expect(trouble && offered.text.includes(words.evidence(trouble))).toBe(true);
  expect(offered.text.match(/Dark everywhere/g)).toHaveLength(1);
  await choose(seat, 'What to check');
  expect(await seat.evaluate(() => document.activeElement?.id)).toBe('what-to-check');
  expect(await faults(page, 'sweep-never-lights')).toEqual([]);

  await press(seat, 'a');
  const ended = await untilText(seat, 'This practice camera was made to stay dark. The sweep named it.');
  expect(ended.text).not.toMatch(/steady from|% sure/);
  expect(ended.text).toContain('Check that the active point lies on the target');
  expect(await faults(page, 'outcome-never-lights')).toEqual([]);
  await choose(seat, 'Next lens');
  await untilStart(seat);

  await putUnderWay(chromium, gapSweep());
  await untilText(seat, 'A gap in the band');
  await press(seat, 'a');
  const gap = await until(seat, 'the result', ({ phase, text }) => phase === 'finished' && text.includes('but is steady on both sides'));
  expect(gap.text).not.toMatch(/% sure|95\s?%/);
  expect(gap.found).toBeNull();
  expect(await faults(page, 'outcome-gap')).toEqual([]);
});

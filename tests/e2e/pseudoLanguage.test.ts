// Contract of every screen in a language that needs half as much room again: at 180, 240 and 360 px nothing is cut, crosses
// its frame or scrolls sideways. A picture of each is kept for people to look at.
import { expect, test } from 'vitest';
import { at, begin, go, found, reopen, settled, untilScreen, untilStart } from './pseudo/tour.ts';
import { press, type, until, untilPhase } from './seat.ts';
import { gapSweep, oddSweep, practiceSweep, putUnderWay, sweepIn } from './underWay.ts';

test('the screens beside a sweep, empty and in use', async () => {
  const tour = await begin();
  const { chromium, seat } = tour;
  await at(tour, 'start');
  await type(seat, 'Corvid 24-70 f/4');
  await at(tour, 'start-typing');
  for (const chip of ['Body', 'Focal length', 'Distance', 'Range', 'More']) {
    await go(tour, chip);
    await settled(tour);
    await at(tour, `start-${chip.toLowerCase()}`);
    await press(seat, 'Escape');
  }
  for (const place of ['Logbook', 'Plan', 'Kit', 'Settings', 'Help']) {
    await go(tour, place);
    await untilScreen(tour, place.toLowerCase());
    await settled(tour);
    await at(tour, place.toLowerCase());
    await go(tour, 'Back');
    await untilStart(seat);
  }
  await go(tour, 'Practice camera');
  await settled(tour);
  await at(tour, 'practice');
  await go(tour, 'Practice pictures');
  await settled(tour);
  await at(tour, 'practice-pictures');
  await go(tour, 'Back');
  await settled(tour);
  await go(tour, 'Train your eye');
  await settled(tour);
  await at(tour, 'training');

  await putUnderWay(chromium, sweepIn('offered'));
  await untilPhase(seat, 'offered');
  await press(seat, 'a');
  await untilPhase(seat, 'finished');
  await settled(tour);
  await at(tour, 'outcome');
  await press(seat, 'n');
  await untilScreen(tour, 'next');
  await at(tour, 'next-lens');
  await go(tour, 'Back');
  await untilStart(seat);
  await go(tour, 'Logbook');
  await until(seat, 'a line', ({ screen }) => screen === 'logbook');
  await tour.page.waitForSelector('.entries button');
  await at(tour, 'logbook-found');
  await tour.page.click('.entries button');
  await untilScreen(tour, 'situation');
  await settled(tour);
  await at(tour, 'situation');
  await tour.page.click('.history button');
  await until(seat, 'the record', ({ screen, text }) => screen === 'record' && text.length > 200);
  await settled(tour);
  await at(tour, 'record');
  expect(found(tour)).toEqual([]);
});

test('every phase of a sweep, its troubles and its ends', async () => {
  const tour = await begin();
  for (const phase of ['dialling', 'offered', 'paused', 'checking', 'finished'] as const) {
    await reopen(tour, sweepIn(phase));
    await untilPhase(tour.seat, phase);
    await settled(tour);
    await at(tour, `sweep-${phase}`);
  }
  await reopen(tour, practiceSweep(7));
  await untilPhase(tour.seat, 'dialling');
  await press(tour.seat, 'v');
  await tour.page.waitForSelector('.setting');
  await at(tour, 'sweep-setting');
  await tour.page.keyboard.press('Escape');
  await reopen(tour, practiceSweep(7));
  await untilPhase(tour.seat, 'dialling');
  await press(tour.seat, ' ');
  await untilPhase(tour.seat, 'holding');
  await at(tour, 'sweep-holding');
  await untilPhase(tour.seat, 'judging');
  await at(tour, 'sweep-judging');

  await reopen(tour, oddSweep(7, 'never lights'));
  let { phase } = await untilPhase(tour.seat, 'dialling');
  while (phase === 'dialling') {
    await press(tour.seat, ' ');
    await untilPhase(tour.seat, 'holding');
    await press(tour.seat, 'n');
    ({ phase } = await untilPhase(tour.seat, 'dialling', 'offered', 'checking'));
  }
  await settled(tour);
  await at(tour, 'sweep-never-lights');
  await press(tour.seat, 'a');
  await untilPhase(tour.seat, 'finished');
  await settled(tour);
  await at(tour, 'outcome-never-lights');

  await reopen(tour, gapSweep());
  await untilPhase(tour.seat, 'offered');
  await press(tour.seat, 'a');
  await untilPhase(tour.seat, 'finished');
  await settled(tour);
  await at(tour, 'outcome-gap');
  expect(found(tour)).toEqual([]);
});

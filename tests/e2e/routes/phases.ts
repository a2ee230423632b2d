// The way through every phase of a sweep, its troubles and its ends.
import { press, untilPhase } from '../seat.ts';
import { gapSweep, oddSweep, practiceSweep, sweepIn } from '../underWay.ts';
import { at, reopen, settled, type Tour } from './tour.ts';

export async function phases(tour: Tour): Promise<void> {
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
}

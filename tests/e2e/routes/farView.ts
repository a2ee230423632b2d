// The way through a sweep as it is read from the tripod.
import { press, untilPhase } from '../seat.ts';
import { practiceSweep, sweepIn } from '../underWay.ts';
import { at, reopen, settled, type Tour } from './tour.ts';

const fromAfar = async (tour: Tour): Promise<void> => {
  await press(tour.seat, 'w');
  await tour.page.waitForSelector('[data-far="true"]');
  await settled(tour);
};

export async function farView(tour: Tour): Promise<void> {
  await reopen(tour, sweepIn('dialling'));
  await untilPhase(tour.seat, 'dialling');
  await fromAfar(tour);
  await at(tour, 'far-dialling');
  // The panel keeps it from here on.
  for (const phase of ['paused', 'checking', 'offered'] as const) {
    await reopen(tour, sweepIn(phase));
    await untilPhase(tour.seat, phase);
    await settled(tour);
    await at(tour, `far-${phase}`);
  }
  await press(tour.seat, 'a');
  await untilPhase(tour.seat, 'finished');
  await settled(tour);
  await at(tour, 'far-outcome');
  await reopen(tour, practiceSweep(7));
  await untilPhase(tour.seat, 'dialling');
  await press(tour.seat, ' ');
  await untilPhase(tour.seat, 'holding');
  await at(tour, 'far-holding');
  await untilPhase(tour.seat, 'judging');
  await at(tour, 'far-judging');
}

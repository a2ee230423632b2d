// The way through one round of the trainer.
import { press } from '../seat.ts';
import { at, go, settled, type Tour } from './tour.ts';

export async function trainer(tour: Tour): Promise<void> {
  const { page, seat } = tour;
  const phase = (...wanted: readonly string[]): Promise<unknown> =>
    page.waitForFunction((all) => all.includes(document.querySelector<HTMLElement>('[data-training]')?.dataset['training'] ?? 'over'), {}, wanted);
  await go(tour, 'Practice camera');
  await settled(tour);
  await go(tour, 'Train your eye');
  await settled(tour);
  await go(tour, 'Begin a round');
  await phase('dialling');
  await at(tour, 'training-ready');
  await press(seat, ' ');
  await phase('holding');
  await at(tour, 'training-watch');
  await phase('judging');
  await at(tour, 'training-over');
  await press(seat, 'n');
  await phase('dialling');
  await at(tour, 'training-was');
  for (let holds = 1; holds < 10; holds += 1) {
    await press(seat, ' ');
    await phase('holding');
    await press(seat, 'n');
    await phase('dialling', 'over');
  }
  await phase('over');
  await settled(tour);
  await at(tour, 'training-round');
}

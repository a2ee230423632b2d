// The way through a plan: its form, refused and filled in, what it asks for, and the start that goes on with it.
import { at, enter, go, settled, unfold, untilScreen, untilShown, untilStart, type Tour } from './tour.ts';

export async function fullPlan(tour: Tour): Promise<void> {
  const { page, seat } = tour;
  await go(tour, 'Plan');
  await untilScreen(tour, 'plan');
  await unfold(tour);
  await at(tour, 'plan-form');
  await go(tour, 'Make the plan');
  await settled(tour);
  await at(tour, 'plan-refused');
  // A body, a zoom whose focal lengths are known, and the converter.
  for (const wanted of [0, 2, 5]) {
    await page.$$eval('input[type="checkbox"]', (all, at) => all[at]?.click(), wanted);
    await settled(tour);
  }
  await enter(tour, 'Distances', '2 8');
  await go(tour, 'Make the plan');
  await untilShown(tour, 'measured');
  await unfold(tour);
  await at(tour, 'plan-full');
  await go(tour, 'Back');
  await untilStart(seat);
  await settled(tour);
  await at(tour, 'start-planned');
}

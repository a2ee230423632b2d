// The way through every screen beside a sweep, first empty, then with what one sweep leaves behind.
import { press, type, until, untilPhase } from '../seat.ts';
import { putUnderWay, sweepIn } from '../underWay.ts';
import { at, atRooms, go, settled, unfold, untilScreen, untilStart, type Tour } from './tour.ts';

export async function besideSweep(tour: Tour): Promise<void> {
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
    await atRooms(tour, place.toLowerCase());
    await go(tour, 'Back');
    await untilStart(seat);
  }
  await go(tour, 'Settings');
  await untilScreen(tour, 'settings');
  await settled(tour);
  await go(tour, 'About Sweepbook');
  await untilScreen(tour, 'about');
  await settled(tour);
  await at(tour, 'about');
  await go(tour, 'Back');
  await go(tour, 'Back');
  await untilStart(seat);
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
  await unfold(tour);
  await at(tour, 'situation-unfolded');
  await tour.page.click('.history button');
  await until(seat, 'the record', ({ screen, text }) => screen === 'record' && text.length > 200);
  await settled(tour);
  await at(tour, 'record');
}

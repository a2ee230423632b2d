// The way through the bench, refused and in use, and every step of its walk.
import { press } from '../seat.ts';
import { at, enter, go, settled, shows, unfold, untilScreen, untilStart, type Tour } from './tour.ts';

/** More of the bench than the walk needs. */
const IN_USE = [
  ['Widest aperture', '1.8'],
  ['Printed scale measures', '96'],
  ['Length of the target', '2,900'],
  ['ISO', '100'],
  ['Aperture', '2.8'],
  ['Shutter', '1/30'],
  ['Reflection off the middle', '90'],
  ['Number at the sharpest line', '-12'],
  ['Share of the depth', '66'],
] as const;
const REFUSED = [
  ['Distance as measured', '1,250 ft'],
  ['Closest focus', '12 m'],
  ['Widest aperture', 'wide'],
  ['Converter factor', '9'],
  ['Width of a photograph', '1'],
  ['AF area', '900'],
  ['One step', '9'],
  ['Printed scale measures', '12'],
  ['ISO', '0'],
  ['Reflection off the middle', '1,000,0'],
  ['Number at the sharpest line', 'x'],
  ['Share of the depth', '900'],
] as const;

async function toTheBench(tour: Tour): Promise<void> {
  await go(tour, 'More');
  await settled(tour);
  await go(tour, 'Set up the bench');
  await untilScreen(tour, 'bench');
}

export async function benchAndWalk(tour: Tour): Promise<void> {
  const { page, seat } = tour;
  await toTheBench(tour);
  await at(tour, 'bench');
  await unfold(tour);
  await at(tour, 'bench-unfolded');
  for (const [field, typed] of REFUSED) await enter(tour, field, typed);
  await at(tour, 'bench-refused');
  await page.reload();
  await untilStart(seat);
  await toTheBench(tour);
  await unfold(tour);
  for (const [field, typed] of IN_USE) await enter(tour, field, typed);
  await unfold(tour);
  await at(tour, 'bench-in-use');
  await go(tour, 'Walk through');
  await untilScreen(tour, 'walk');
  for (let step = 1; !(await shows(tour, 'Ready for the first hold')); step += 1) {
    await at(tour, `walk-${step}`);
    await press(seat, 'n');
  }
  await at(tour, 'walk-done');
}

// Contract of every screen in a language that needs half as much room again: at 180, 240 and 360 px nothing is cut, crosses
// its frame or scrolls sideways. A picture of each is kept for people to look at.
import { expect, test } from 'vitest';
import { begin, found } from './pseudo/tour.ts';
import { besideSweep } from './routes/besideSweep.ts';
import { phases } from './routes/phases.ts';

test('the screens beside a sweep, empty and in use', async () => {
  const tour = await begin();
  await besideSweep(tour);
  expect(found(tour)).toEqual([]);
});

test('every phase of a sweep, its troubles and its ends', async () => {
  const tour = await begin();
  await phases(tour);
  expect(found(tour)).toEqual([]);
});

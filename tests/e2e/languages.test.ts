// Contract of every screen in every language: at 180, 240 and 360 px nothing is cut, crosses its frame or scrolls sideways; folded at 360 px a
// screen is hardly higher than in English. A picture of each is kept for people to look at.
import { expect, onTestFinished, test } from 'vitest';
import { setOut } from './languages/tour.ts';
import { storedShop } from './library/shop.ts';
import { murmuring } from './murmuring.ts';
import { benchAndWalk } from './routes/benchAndWalk.ts';
import { besideSweep } from './routes/besideSweep.ts';
import { kitAndFiles } from './routes/kitAndFiles.ts';
import { pages } from './routes/pages.ts';
import { phases } from './routes/phases.ts';
import { trainer } from './routes/trainer.ts';

test.for([
  ['the screens beside a sweep', besideSweep, {}],
  ['every phase of a sweep, its troubles and its ends', phases, {}],
  ['the kit with its forms, and the files', kitAndFiles, storedShop(Date.now())],
  ['the bench and every step of its walk', benchAndWalk, storedShop(Date.now())],
  ['the trainer', trainer, {}],
  ['the pages in tabs of their own', pages, storedShop(Date.now())],
] as const)('%s', { timeout: 240_000 }, async ([, route, stored]) => {
  const began = performance.now();
  const tour = await setOut(stored, murmuring(onTestFinished));
  await route(tour);
  console.log(`in every language: ${tour.seen.length} screens in ${Math.round((performance.now() - began) / 1000)} s, ${tour.faults.length} faults`);
  expect(tour.faults).toEqual([]);
});

// Contract of every screen in a language that is written from right to left and needs half as much room again: at 180, 240 and 360 px nothing
// is cut, crosses its frame or scrolls sideways, and every value reads as it does elsewhere. There is no such language yet.
import { expect, onTestFinished, test } from 'vitest';
import { storedShop } from './library/shop.ts';
import { murmuring } from './murmuring.ts';
import { begin, found } from './pseudo/tour.ts';
import { benchAndWalk } from './routes/benchAndWalk.ts';
import { besideSweep } from './routes/besideSweep.ts';
import { kitAndFiles } from './routes/kitAndFiles.ts';
import { pages } from './routes/pages.ts';
import { phases } from './routes/phases.ts';

test.for([
  ['the screens beside a sweep', besideSweep, {}],
  ['every phase of a sweep, its troubles and its ends', phases, {}],
  ['the kit with its forms, and the files', kitAndFiles, storedShop(Date.now())],
  ['the bench and every step of its walk', benchAndWalk, storedShop(Date.now())],
  ['the pages in tabs of their own', pages, storedShop(Date.now())],
] as const)('%s', { timeout: 240_000 }, async ([, route, stored]) => {
  const tour = await begin(stored, murmuring(onTestFinished), 'rtl');
  await route(tour);
  expect(found(tour)).toEqual([]);
});

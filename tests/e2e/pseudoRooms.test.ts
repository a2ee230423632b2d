// Contract of the forms of the kit, the files, the bench with its walk, the trainer and the pages in tabs in a language that needs half
// as much room again: at 180, 240 and 360 px nothing is cut, crosses its frame or scrolls sideways.
import { expect, onTestFinished, test } from 'vitest';
import { storedShop } from './library/shop.ts';
import { murmuring } from './murmuring.ts';
import { begin, found } from './pseudo/tour.ts';
import { benchAndWalk } from './routes/benchAndWalk.ts';
import { kitAndFiles } from './routes/kitAndFiles.ts';
import { pages } from './routes/pages.ts';
import { trainer } from './routes/trainer.ts';

test('the kit with its forms, and the files', async () => {
  const tour = await begin(storedShop(Date.now()));
  await kitAndFiles(tour);
  expect(found(tour)).toEqual([]);
});

test('the bench and every step of its walk', async () => {
  const tour = await begin(storedShop(Date.now()));
  await benchAndWalk(tour);
  expect(found(tour)).toEqual([]);
});

test('the trainer', async () => {
  const tour = await begin();
  await trainer(tour);
  expect(found(tour)).toEqual([]);
});

test('the pages in tabs of their own', async () => {
  const tour = await begin(storedShop(Date.now()), murmuring(onTestFinished));
  await pages(tour);
  expect(found(tour)).toEqual([]);
});

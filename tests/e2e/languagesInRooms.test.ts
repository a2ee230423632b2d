// Contract of the forms of the kit, the files, the bench with its walk, the trainer and the pages in tabs in every language
// (languages/contracts.ts).
import { onTestFinished } from 'vitest';
import { holdIn } from './languages/contracts.ts';
import { tourOfPages, tourOfPanel } from './languages/tour.ts';
import { storedShop } from './library/shop.ts';
import { murmuring } from './murmuring.ts';
import { benchAndWalk } from './routes/benchAndWalk.ts';
import { kitAndFiles } from './routes/kitAndFiles.ts';
import { pages } from './routes/pages.ts';
import { trainer } from './routes/trainer.ts';

const stored = storedShop(Date.now());

holdIn([
  ['the kit with its forms, and the files', () => tourOfPanel(kitAndFiles, { stored })],
  ['the bench and every step of its walk', () => tourOfPanel(benchAndWalk, { stored })],
  ['the trainer', () => tourOfPanel(trainer)],
  // The hearing check listens.
  ['the pages in tabs of their own', () => tourOfPages(pages, { stored, args: () => murmuring(onTestFinished) })],
]);

// The way through the pages in tabs of their own.
import type { Page } from 'puppeteer-core';
import { magnification } from '../../../src/optics/quantity.ts';
import { writeOrder, type TargetOrder } from '../../../src/optics/print/order.ts';
import { millimetres } from '../../../src/units.ts';
import { visit, type Tour } from './tour.ts';

/** On one sheet: of two, words may run from one onto the next. */
const ORDER: TargetOrder = {
  magnification: magnification(0.04),
  pitch: millimetres(0.006),
  area: millimetres(2.5),
  sensor: { width: millimetres(36), height: millimetres(24) },
  depth: millimetres(90),
  words: ['Orrin 85 f/1.8 on Velde M1', '85 mm at 4.25 m, 20 Nov 2026'],
  paper: 'A4',
};

async function listen(page: Page): Promise<void> {
  await page.click('#check .chief');
  await page.waitForSelector('meter');
  await page.$$eval('main details', (all) => all.forEach((one) => (one.open = true)));
}

export async function pages(tour: Tour): Promise<void> {
  await visit(tour, 'card.html#b', 'card');
  await visit(tour, 'card.html#none', 'card-none');
  await visit(tour, 'entering.html#of=s', 'entering');
  await visit(tour, 'entering.html#of=none', 'entering-none');
  await visit(tour, 'workshop.html#r3', 'workshop');
  await visit(tour, `target.html#${writeOrder(ORDER)}`, 'target');
  await visit(tour, 'target.html', 'target-none');
  await visit(tour, 'welcome.html', 'welcome');
  await visit(tour, 'microphone.html', 'microphone');
  await visit(tour, 'hearing.html', 'hearing');
  await visit(tour, 'hearing.html', 'hearing-listening', listen);
  await visit(tour, 'hearing.html', 'hearing-lesson', async (page) => {
    await listen(page);
    await page.click('.taught button');
  });
}

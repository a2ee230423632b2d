// Contract of the forms of the kit, the files, the bench with its walk, the trainer and the pages in tabs in a language that needs half
// as much room again: at 180, 240 and 360 px nothing is cut, crosses its frame or scrolls sideways.
import { expect, onTestFinished, test } from 'vitest';
import { writeBackup } from '../../src/logbook/backup/backup.ts';
import { magnification } from '../../src/optics/quantity.ts';
import { writeOrder, type TargetOrder } from '../../src/optics/print/order.ts';
import { millimetres, moment } from '../../src/units.ts';
import { jpegFile, tiffFile, VELDE } from '../kit/photographFile.ts';
import { giveFile, library } from './library/shelves.ts';
import { storedShop } from './library/shop.ts';
import { murmuring } from './murmuring.ts';
import { at, begin, enter, go, found, settled, shows, unfold, untilScreen, untilStart, visit, type Tour } from './pseudo/tour.ts';
import { press } from './seat.ts';

const FORMS = ['body', 'lens', 'converter'] as const;
const TABLE = 'Body;Lens;Focal length (mm);Value;Date\r\nVelde M2;Orrin 35 f/2;35;4;2026-01-02\r\nVelde M2;Orrin 35 f/2;x;4;03/04/2026\r\n';

const back = (tour: Tour): Promise<void> => go(tour, 'Back');

test('the kit with its forms, and the files', async () => {
  const tour = await begin(storedShop(Date.now()));
  const { page } = tour;
  await go(tour, 'Kit');
  await untilScreen(tour, 'kit');
  await giveFile(page, 'image', 'photograph.jpg', jpegFile(tiffFile(VELDE)));
  await unfold(tour);
  await at(tour, 'kit-photograph');
  for (const form of FORMS) {
    await page.click(`.list:nth-of-type(${FORMS.indexOf(form) + 1}) li button`);
    await untilScreen(tour, form);
    await unfold(tour);
    await at(tour, form);
    await back(tour);
    await go(tour, `Add a ${form}`);
    await untilScreen(tour, form);
    await go(tour, 'Save');
    await at(tour, `${form}-refused`);
    await back(tour);
  }
  await back(tour);
  await go(tour, 'Logbook');
  await untilScreen(tour, 'logbook');
  await unfold(tour);
  await at(tour, 'logbook-full');
  await go(tour, 'Backup and tables');
  await untilScreen(tour, 'files');
  await giveFile(page, 'json', 'backup.json', writeBackup(library, moment(Date.now())));
  await giveFile(page, 'csv', 'table.csv', TABLE);
  await unfold(tour);
  await at(tour, 'files-coming-in');
  await go(tour, 'Join it');
  await settled(tour);
  await at(tour, 'files-joined');
  await giveFile(page, 'json', 'letter.json', '{');
  await giveFile(page, 'csv', 'table.csv', '');
  await settled(tour);
  await at(tour, 'files-refused');
  expect(found(tour)).toEqual([]);
});

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
  await unfold(tour);
}

test('the bench and every step of its walk', async () => {
  const tour = await begin(storedShop(Date.now()));
  const { page, seat } = tour;
  await toTheBench(tour);
  await at(tour, 'bench');
  for (const [field, typed] of REFUSED) await enter(tour, field, typed);
  await at(tour, 'bench-refused');
  await page.reload();
  await untilStart(seat);
  await toTheBench(tour);
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
  expect(found(tour)).toEqual([]);
});

test('the trainer', async () => {
  const tour = await begin();
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
  expect(found(tour)).toEqual([]);
});

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

test('the pages in tabs of their own', async () => {
  const tour = await begin(storedShop(Date.now()), murmuring(onTestFinished));
  await visit(tour, 'card.html#b', 'card');
  await visit(tour, 'card.html#none', 'card-none');
  await visit(tour, 'entering.html#of=s', 'entering');
  await visit(tour, 'entering.html#of=none', 'entering-none');
  await visit(tour, 'workshop.html#r3', 'workshop');
  await visit(tour, `target.html#${writeOrder(ORDER)}`, 'target');
  await visit(tour, 'target.html', 'target-none');
  await visit(tour, 'microphone.html', 'microphone');
  await visit(tour, 'hearing.html', 'hearing');
  await go(tour, 'Listen');
  await settled(tour);
  await unfold(tour);
  await at(tour, 'hearing-listening');
  await go(tour, 'Teach solid');
  await at(tour, 'hearing-lesson');
  expect(found(tour)).toEqual([]);
});

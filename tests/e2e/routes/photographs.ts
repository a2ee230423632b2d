// The way through photographs: none yet, one that is read, one that cannot be, and the check of a value.
import { rigPicture } from '../../photographs/rigPicture.ts';
import { giveBytes, giveDrawn } from '../pictureFiles.ts';
import { pngFile } from '../../pngPixels.ts';
import { at, go, settled, unfold, untilScreen, untilShown, untilStart, type Tour } from './tour.ts';

const read = (tour: Tour, count: number): Promise<unknown> => untilShown(tour, `${count} of ${count} picture`);

export async function photographs(tour: Tour): Promise<void> {
  const { page, seat } = tour;
  await go(tour, 'Check with photographs');
  await untilScreen(tour, 'photographs');
  await settled(tour);
  await at(tour, 'photographs-none');
  await giveBytes(seat, 'shot-1.png', pngFile(rigPicture(30)));
  await giveDrawn(seat, [{ type: 'image/png', width: 400, height: 300, name: 'stripes.png' }], 'choose');
  await read(tour, 2);
  await unfold(tour);
  await at(tour, 'photographs-read');
  await go(tour, 'Back');
  await untilStart(seat);
  await go(tour, 'Logbook');
  await untilScreen(tour, 'logbook');
  await page.waitForSelector('.entries button');
  await page.click('.entries button');
  await untilScreen(tour, 'situation');
  await go(tour, 'Check it with photographs');
  await untilScreen(tour, 'photographs');
  for (const [index, error] of [0, 31, 29, 30].entries()) await giveBytes(seat, `shot-${index + 1}.png`, pngFile(rigPicture(error)));
  await read(tour, 4);
  await unfold(tour);
  await at(tour, 'photographs-check');
}

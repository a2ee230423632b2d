// The way through the kit with its forms, and what comes in from files.
import { writeBackup } from '../../../src/logbook/backup/backup.ts';
import { moment } from '../../../src/units.ts';
import { jpegFile, tiffFile, VELDE } from '../../kit/photographFile.ts';
import { giveFile, library } from '../library/shelves.ts';
import { at, go, settled, unfold, untilScreen, type Tour } from './tour.ts';

const FORMS = ['body', 'lens', 'converter'] as const;
const TABLE = 'Body;Lens;Focal length (mm);Value;Date\r\nVelde M2;Orrin 35 f/2;35;4;2026-01-02\r\nVelde M2;Orrin 35 f/2;x;4;03/04/2026\r\n';

const back = (tour: Tour): Promise<void> => go(tour, 'Back');

export async function kitAndFiles(tour: Tour): Promise<void> {
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
}

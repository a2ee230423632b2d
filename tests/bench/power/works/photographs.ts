// One picture, read, kept in the logbook with its crop, and erased again.
import { rigPicture } from '../../../photographs/rigPicture.ts';
import { giveBytes } from '../../../e2e/pictureFiles.ts';
import { pngFile } from '../../../pngPixels.ts';
import { look } from '../../../e2e/seat.ts';
import { shows, tap } from '../shows.ts';
import type { Work } from '../work.ts';
import { PHOTOGRAPHS, photographsAs } from './photographsFact.ts';
import { toSituation, toStart } from './ways.ts';

const KEPT = 'It is in the history of this situation.';
let picture: Buffer | null = null;
const taken = (): Buffer => (picture ??= pngFile(rigPicture(30)));

export const photographs: Work = {
  name: 'photographs',
  desk: 'logbook',
  lasts: 4000,
  presses: 2,
  acknowledges: 2,
  async go(life, seat) {
    await toStart(life, seat);
    await toSituation(seat);
    await tap(seat, 'Check it with photographs');
    await shows(seat, { text: 'drop them here' });
    await giveBytes(seat, 'shot-1.png', taken());
    await shows(seat, { text: 'in the logbook' }, 60_000);
    for (;;) {
      const isKept = (await look(seat)).text.includes(KEPT);
      life.ledger.drop((what) => what === PHOTOGRAPHS);
      life.pressed();
      await tap(seat, isKept ? 'Erase it again' : 'Keep in the logbook');
      await shows(seat, isKept ? { without: KEPT, text: 'Keep in the logbook' } : { text: KEPT });
      life.acknowledged(photographsAs(isKept ? 'erased' : 'kept'));
    }
  },
};

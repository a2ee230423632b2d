// Copies that are brought back: everything is as it was then, or everything is as it was before.
import type { Kit } from '../../../../src/kit/kit.ts';
import { KEY, PREFIX } from '../../../../src/logbook/keys.ts';
import { canonical } from '../../../../src/logbook/canonical.ts';
import { readCopy, readKept } from '../kept.ts';
import type { Fact } from '../ledger.ts';
import { shows, tap } from '../shows.ts';
import type { Work } from '../work.ts';
import { kitAs } from './kitEdit.ts';
import { photographsAs } from './photographsFact.ts';
import { toFiles, toStart } from './ways.ts';

export const bringBack: Work = {
  name: 'snapshot',
  desk: 'logbook',
  lasts: 2500,
  presses: 2,
  acknowledges: 2,
  async go(life, seat) {
    await toStart(life, seat);
    for (;;) {
      await toFiles(seat);
      const { copies } = await seat.evaluate(readKept);
      const nth = Math.floor(copies.length * life.random());
      const copy = copies[nth];
      if (!copy) return;
      await shows(seat, { text: 'Bring back ' });
      life.ledger.mayBecome(asIn(await seat.evaluate(readCopy, copy.at)));
      life.pressed();
      await seat.click(`section[aria-labelledby="copies"] button:nth-of-type(${nth + 1})`);
      await shows(seat, { text: 'Everything is as it was then.' });
      life.ledger.became();
      life.acknowledged({ what: 'a copy brought back', of: 'logbook', isIn: ({ local }) => KEY.replaced in local });
      await seat.click('[aria-label="Back"]');
      await shows(seat, { screen: 'logbook' });
      await tap(seat, 'Back');
    }
  },
};

/** What is written once and never changed must come back to the letter; of the kit, what was ever told of it. */
function asIn(stored: Readonly<Record<string, unknown>>): readonly Fact[] {
  const written = Object.entries(stored).filter(([key]) => [PREFIX.record, PREFIX.byHand, PREFIX.entry, PREFIX.note].some((prefix) => key.startsWith(prefix)));
  return [
    ...written.map(([key, value]): Fact => {
      const wanted = canonical(value);
      return { what: `${key} of a copy`, of: 'logbook', isIn: ({ local }) => canonical(local[key]) === wanted };
    }),
    ...kitAs(stored[KEY.kit] as Kit),
    ...(Object.keys(stored).some((key) => key.startsWith(PREFIX.proof)) ? [photographsAs('there')] : []),
  ];
}

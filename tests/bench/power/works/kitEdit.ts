// The kit: the serial number of a body changed, lenses added, notes of what happened to the body.
import type { Kit } from '../../../../src/kit/kit.ts';
import { KEY, noteKey } from '../../../../src/logbook/keys.ts';
import { under } from '../kept.ts';
import type { Fact } from '../ledger.ts';
import { fill, shows, tap } from '../shows.ts';
import type { Work } from '../work.ts';
import { toStart } from './ways.ts';

const BODY = '.list:nth-of-type(1) li button';

export const kitEdit: Work = {
  name: 'kit edit',
  desk: 'logbook',
  lasts: 3000,
  presses: 3,
  acknowledges: 3,
  async go(life, seat) {
    await toStart(life, seat);
    await tap(seat, 'Kit', 'nav');
    for (let turn = 0; ; turn += 1) {
      const number = 100 * life.number + turn;
      await shows(seat, { screen: 'kit' });
      await seat.click(BODY);
      await shows(seat, { screen: 'body', text: 'Serial number' });
      await fill(seat, 'Serial number', `S${number}`);
      life.pressed();
      await tap(seat, 'Save');
      await shows(seat, { screen: 'kit', text: `S${number}` });
      life.acknowledged(serialFrom(number));

      await tap(seat, 'Add a lens');
      await shows(seat, { screen: 'lens', text: 'Serial number' });
      await fill(seat, 'Name', `Orrin L${number}`);
      life.pressed();
      await tap(seat, 'Save');
      await shows(seat, { screen: 'kit', text: `Orrin L${number}` });
      life.acknowledged(lensNamed(`Orrin L${number}`));

      await seat.click(BODY);
      await tap(seat, 'Note new firmware or service');
      await fill(seat, 'Note', `N${number}`);
      life.pressed();
      await tap(seat, 'Save the note');
      await shows(seat, { text: 'Saved. What was measured before is due again.' });
      life.acknowledged(noted(`N${number}`));
      await seat.click('[aria-label="Back"]');
    }
  },
};

const kitIn = (local: Readonly<Record<string, unknown>>): Kit | undefined => local[KEY.kit] as Kit | undefined;

const numberOf = (serial: string | null): number => Number(/^S(\d+)$/.exec(serial ?? '')?.[1] ?? 0);

/** A later one may have been on its way. */
const serialFrom = (number: number): Fact => ({
  what: 'serial number of the body',
  of: 'logbook',
  isIn: ({ local }) => kitIn(local)?.bodies.some(({ serial }) => numberOf(serial) >= number) ?? false,
});

const lensNamed = (wanted: string): Fact => ({
  what: `lens ${wanted}`,
  of: 'logbook',
  isIn: ({ local }) => kitIn(local)?.lenses.some(({ name }) => name === wanted) ?? false,
});

const noted = (wanted: string): Fact => ({
  what: `note ${wanted}`,
  of: 'logbook',
  isIn: (kept) => under<{ note: string }>(kept, noteKey('')).some(({ note }) => note === wanted),
});

/** A kit that came with a copy. */
export const kitAs = (kit: Kit): readonly Fact[] => [
  ...kit.lenses.map(({ name }) => lensNamed(name)),
  serialFrom(Math.max(0, ...kit.bodies.map(({ serial }) => numberOf(serial)))),
];

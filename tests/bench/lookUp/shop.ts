// A logbook as a year's work of a repair shop might fill it: thousands of situations, each with one value entered.
import { unknownConditions } from '../../../src/logbook/conditions.ts';
import type { Entry } from '../../../src/logbook/entry.ts';
import { EMPTY_LIBRARY, type Library } from '../../../src/logbook/library.ts';
import { newBody, newLens, subjectIn, type Kit, type Situation } from '../../../src/kit/kit.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { millimetres, moment, steps } from '../../../src/units.ts';

const SITUATIONS = 5000;
export const NOW = moment(1_767_261_600_000);
const FOCAL = [24, 28, 35, 50, 70, 85, 105, 135, 200, 300];

export function shop(): Library {
  const random = seededRandom(4);
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)] as Item;
  const serial = () => `${pick(['A', 'KX-', '00', 'T'])}${Math.floor(10_000 + random() * 900_000)}`;
  const bodies = Array.from({ length: 250 }, (_, n) => ({
    ...newBody(`b${n}`, `${pick(['Velde M1', 'Velde M2', 'Marn D'])} ${pick(['old', 'new', ''])}`, NOW),
    serial: serial(),
  }));
  const lenses = Array.from({ length: 1500 }, (_, n) => ({
    ...newLens(`l${n}`, `${pick(['Orrin', 'Tessel', 'Havel'])} ${pick(FOCAL)} f/${pick([1.4, 1.8, 2, 2.8, 4])}`, NOW),
    serial: serial(),
  }));
  const situations = Array.from({ length: SITUATIONS }, (_, n): Situation => {
    const focalLength = pick(FOCAL);
    const distance = millimetres(focalLength * pick([25, 50, 80]));
    return {
      id: `s${n}`,
      changed: NOW,
      retired: null,
      body: pick(bodies).id,
      lens: pick(lenses).id,
      converter: null,
      focalLength: millimetres(focalLength),
      distance,
    };
  });
  const kit: Kit = { bodies, lenses, converters: [], situations };
  const entries = situations.map((situation, n): Entry => ({
    id: `e${n}`,
    at: moment(NOW - random() * 3e10),
    subject: subjectIn(kit, situation),
    value: steps(Math.floor(random() * 41) - 20),
    record: null,
    conditions: unknownConditions(NOW),
  }));
  return { ...EMPTY_LIBRARY, kit, entries };
}

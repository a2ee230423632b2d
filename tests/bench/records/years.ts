// A logbook as many years of a repair shop might leave it: 20,000 finished sweeps, each with every event of its journal, over
// thousands of situations.
import { newBody, newLens, subjectIn, type Kit, type Situation } from '../../../src/kit/kit.ts';
import { EMPTY_LIBRARY, type Library } from '../../../src/logbook/library.ts';
import type { LogRecord } from '../../../src/logbook/record.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import type { SweepEvent } from '../../../src/sweep/event.ts';
import { currentOutcome } from '../../../src/sweep/turn.ts';
import { millimetres, moment } from '../../../src/units.ts';
import { practised } from '../../sweep/trouble/practised.ts';

const RECORDS = 20_000;
const SITUATIONS = 5000;
const BODIES = 250;
const LENSES = 1500;
export const NOW = moment(1_767_261_600_000);
const YEARS = 12 * 365 * 86_400_000;
const FOCAL = [24, 28, 35, 50, 70, 85, 105, 135, 200, 300];
/** The sweeps that all others are like. */
const SEEDS = [1, 2, 3, 4, 5, 6];

export function years(records = RECORDS): Library {
  const random = seededRandom(11);
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)] as Item;
  const serial = () => `${pick(['A', 'KX-', '00', 'T'])}${Math.floor(10_000 + random() * 900_000)}`;
  const bodies = Array.from({ length: BODIES }, (_, n) => ({
    ...newBody(`b${n}`, `${pick(['Velde M1', 'Velde M2', 'Corvid 85'])} ${n}`, NOW),
    serial: serial(),
  }));
  const lenses = Array.from({ length: LENSES }, (_, n) => ({
    ...newLens(`l${n}`, `${pick(['Orrin', 'Tessel', 'Havel'])} ${pick(FOCAL)} f/${pick([1.4, 1.8, 2, 2.8, 4])}`, NOW),
    serial: serial(),
  }));
  const situations = Array.from({ length: SITUATIONS }, (_, n): Situation => {
    const focalLength = pick(FOCAL);
    return {
      id: `s${n}`,
      changed: NOW,
      retired: null,
      body: pick(bodies).id,
      lens: pick(lenses).id,
      converter: null,
      focalLength: millimetres(focalLength),
      distance: millimetres(focalLength * 50),
    };
  });
  const kit: Kit = { bodies, lenses, converters: [], situations };
  const swept = SEEDS.map((seed) => practised(seed, null)).map(({ state }) => ({ state, outcome: currentOutcome(state, moment(2_000_000)) }));
  return {
    ...EMPTY_LIBRARY,
    kit,
    records: Array.from({ length: records }, (_, n): LogRecord => {
      const subject = subjectIn(kit, situations[n % SITUATIONS] as Situation);
      const {
        state: { journal, plan },
        outcome,
      } = pick(swept);
      const id = `${n}-7a54-4a0b-9d3e-2a1b0c9d8e7f`;
      const began = NOW - Math.floor(random() * YEARS);
      const [first] = journal;
      const since = began - (first?.at ?? 0);
      const moved = journal.map((event): SweepEvent => {
        const at = moment(event.at + since);
        return event.did === 'opened' ? { ...event, at, id, plan: { ...plan, subject, practice: null } } : { ...event, at };
      });
      const finished = moment((moved.at(-1)?.at ?? began) + 4000);

      return { id, finished, practice: false, subject, outcome, journal: [...moved, { did: 'finished', at: finished, by: 'key' }] };
    }),
  };
}

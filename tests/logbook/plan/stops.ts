// Situations for the tests of the plan, drawn from repeatable chance.
import type { Stop } from '../../../src/logbook/plan/changes.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { millimetres } from '../../../src/units.ts';

/** A kit of a few bodies, lenses and converters, of which some situations are to be measured. */
export function stopsFrom(seed: number, count: number): Stop[] {
  const random = seededRandom(seed);
  const oneOf = (most: number): number => Math.floor(random() * most);
  return Array.from({ length: count }, (_, at) => {
    const lens = oneOf(5);
    return {
      id: `${at}`,
      body: `body ${oneOf(3)}`,
      lens: `lens ${lens}`,
      converter: random() < 0.25 ? 'converter' : null,
      focalLength: millimetres([24, 35, 85, 70, 200][(lens + oneOf(2)) % 5] ?? 50),
      distance: millimetres([1200, 2500, 4250, 10_000][oneOf(4)] ?? 2500),
    };
  });
}

// Checks of an entered value with six shots and one in live view: how often one is confirmed that is right, and one that is off by more than
// half the depth of field.
import { checkEntered } from '../../../src/photographs/checkEntered.ts';
import { normal, seededRandom, type Random } from '../../../src/practice/random.ts';
import { millimetres } from '../../../src/units.ts';
import { most, shown, type Figure } from '../figure.ts';
import type { MeasuredPicture } from './measuredPictures.ts';
import { measuredShot, STEP } from './shotErrors.ts';

const RUNS = 2000;
/** In shares of the depth of field, as all here. */
const DEPTH = { front: millimetres(0.5), behind: millimetres(0.5), total: millimetres(1) };

export function checkFigures(measured: readonly MeasuredPicture[]): Figure[] {
  const random = seededRandom(78);
  const confirmed = (truth: () => number) => Array.from({ length: RUNS }, () => isConfirmed(truth(), measured, random)).filter(Boolean).length / RUNS;
  const side = () => (random() < 0.5 ? -1 : 1);
  return [
    most(
      'confirmed when off by more than half the depth of field, share',
      confirmed(() => side() * (0.5 + 0.3 * random())),
      0.005,
    ),
    shown(
      'confirmed when off by half a step, share',
      confirmed(() => side() * 0.5 * STEP),
    ),
  ];
}

/** From a body that hardly scatters to one that scatters over half the depth of field, with a difference between near and far. */
function isConfirmed(truth: number, measured: readonly MeasuredPicture[], random: Random): boolean {
  const scatter = 0.01 + 0.25 * random();
  const way = 0.05 * normal(random, 0, 1);
  const shots = Array.from({ length: 6 }, (_, index) => {
    const thrown = index % 2 === 0 ? ('near' as const) : ('far' as const);
    return { thrown, error: measuredShot(truth + (thrown === 'near' ? way : -way) + normal(random, 0, scatter), measured, random) };
  });
  return checkEntered(shots, measuredShot(0, measured, random), DEPTH)?.verdict.is === 'confirmed';
}

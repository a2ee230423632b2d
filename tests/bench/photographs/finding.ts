// How often the prints are found, how nearly, and how often something else is taken for one.
import { findRamp } from '../../../src/photographs/findRamp.ts';
import { findTarget } from '../../../src/photographs/findTarget.ts';
import { wholePicture } from '../../../src/photographs/pixelSource.ts';
import { lookAt } from '../../../src/photographs/squaresSeen.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { findDrawn } from '../../photographs/pictures/findDrawn.ts';
import { OTHER_KINDS, otherPicture } from '../../photographs/pictures/otherPictures.ts';
import { least, most, shown, type Figure } from '../figure.ts';

export const DRAWN = 200;
export const OTHERS = 300;

export function findingFigures(): Figure[] {
  const random = seededRandom(20);
  const found = Array.from({ length: DRAWN }, (_, index) => findDrawn(random, index)).filter((offs) => offs !== null);
  const offs = found.flat().sort((a, b) => a - b);
  const at = (share: number) => offs[Math.floor(offs.length * share)] ?? NaN;
  return [
    least('targets alone found, share of the pictures', found.length / DRAWN, 0.98),
    most('marks off by, pixels, median', at(0.5), 0.15),
    shown('marks off by, pixels, 95th percentile', at(0.95)),
  ];
}

export function falseFinds(): Figure[] {
  const kinds = Object.keys(OTHER_KINDS) as (keyof typeof OTHER_KINDS)[];
  const planes = Array.from({ length: OTHERS }, (_, index) => otherPicture(kinds[index % kinds.length]!, 101 + index));
  const seen = planes.map((plane) => {
    const squares = lookAt(wholePicture(plane));
    return { target: findTarget(squares).ok, ramp: findRamp(squares).ok };
  });
  return [
    most(`targets found in ${OTHERS} pictures without one`, seen.filter(({ target }) => target).length, 0),
    most(`ramps found in ${OTHERS} pictures without one`, seen.filter(({ ramp }) => ramp).length, 0),
  ];
}

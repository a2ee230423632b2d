// Photographs: how often the prints are found, how near the focus error comes, whether stated intervals are true, and what a bracket
// and a check make of such errors.
import { least, most, shown, type Family, type Figure } from '../figure.ts';
import { bracketFigures } from './brackets.ts';
import { checkFigures } from './checks.ts';
import { DRAWN, falseFinds, findingFigures, OTHERS } from './finding.ts';
import { measurePicture, type MeasuredPicture } from './measuredPictures.ts';

const PICTURES = 400;

export const photographs: Family = {
  name: 'photographs',
  run: ({ tell }) => {
    tell(`${PICTURES} pictures are rendered and measured, a few seconds each`);
    const measured = Array.from({ length: PICTURES }, (_, seed) => measurePicture(seed + 1));
    tell(`${DRAWN} pictures of a target alone and ${OTHERS} other pictures are searched`);
    return Promise.resolve([...pictureFigures(measured), ...findingFigures(), ...falseFinds(), ...bracketFigures(measured), ...checkFigures(measured)]);
  },
};

function pictureFigures(measured: readonly MeasuredPicture[]): Figure[] {
  const answered = measured.filter(({ off }) => off !== null);
  const offs = answered.map(({ off }) => off ?? NaN).sort((a, b) => a - b);
  const at = (share: number) => offs[Math.min(offs.length - 1, Math.floor(share * offs.length))] ?? NaN;
  const margins = answered.map(({ margin }) => margin).sort((a, b) => a - b);
  const found = measured.filter((picture) => picture.found);
  return [
    least('target and ramp found, share of the pictures', found.length / measured.length, 0.98),
    shown('of those found, share measured', answered.length / found.length),
    most('focus error off by, share of the depth of field, median', at(0.5), 0.03),
    most('focus error off by, share of the depth of field, 95th percentile', at(0.95), 0.1),
    least('stated 95 % interval holds the truth, share', answered.filter(({ holds }) => holds).length / answered.length, 0.93),
    shown('half the stated interval, share of the depth of field, median', margins[margins.length >> 1] ?? NaN),
  ];
}

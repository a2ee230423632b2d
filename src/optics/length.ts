// Lengths as people write them: focal lengths in millimetres, distances in metres or feet. The core keeps millimetres
// throughout. What can be read in two ways that are both possible is asked about, never guessed.
import { Distance, FocalLength } from '../kit/lengths.ts';
import { failed, type Result } from '../result.ts';
import type { Millimetres } from '../units.ts';
import { fits } from './fits.ts';
import { writeNumber } from './quantity.ts';
import { inUnit, lengthsIn, type LengthRead } from './writtenLength.ts';

export type DistanceUnit = 'm' | 'ft';

/** A distance: "1.75", "1,75 m", "175 cm", "1,750 mm", "5.74 ft", "5 ft 9 in", `5' 9"`. Without a unit, the one in use. */
export function readDistance(text: string, unit: DistanceUnit): Result<Millimetres> {
  const ways = lengthsIn(text, unit);
  if (ways.length === 0) {
    return failed(unit === 'm' ? 'Write the distance in metres, such as 1.75.' : 'Write the distance in feet, such as 5.74.');
  }
  const checked = onlyOne(text, ways, (length) => fits(Distance, length));
  if (checked.ok || unit === 'm' || ways.some(isPossible)) return checked;
  return failed('Enter the distance in feet, from 0.17 to 1640.');
}

const isPossible = ({ millimetres }: LengthRead): boolean => fits(Distance, millimetres).ok;

/** A distance for the screen: centimetres matter below 10, not above 100. */
export function writeDistance(distance: Millimetres, unit: DistanceUnit): string {
  const value = inUnit(distance, unit);
  return `${writeNumber(value, value < 10 ? 2 : value < 100 ? 1 : 0)} ${unit}`;
}

/** A focal length in millimetres; another unit is recognised and the millimetres are offered. */
export function readFocalLength(text: string): Result<Millimetres> {
  const ways = lengthsIn(text, 'mm');
  const [first] = ways;
  if (!first) return failed('Write the focal length in millimetres, such as 85.');
  const meant = ways.find(({ millimetres }) => fits(FocalLength, millimetres).ok);
  if (meant && meant.unit !== 'mm') {
    return failed(`Write the focal length in millimetres: ${meant.plain} is ${writeNumber(meant.millimetres, 1)}.`);
  }
  if (!meant && first.unit === 'mm' && first.value > 0 && first.value < 2) {
    return failed(
      `${writeNumber(first.value, 3)} looks like metres: write the focal length in millimetres, here ${writeNumber(first.value * 1000, 0)}.`,
    );
  }
  return onlyOne(text, ways, (length) => fits(FocalLength, length));
}

/** The one way to read the text that the range allows; a question where it allows two. */
function onlyOne(text: string, ways: readonly LengthRead[], check: (length: number) => Result<Millimetres>): Result<Millimetres> {
  const checked = ways.map((way) => ({ way, is: check(way.millimetres) }));
  const possible = checked.filter(({ is }) => is.ok);
  const [one, other] = possible.length > 0 ? possible : checked;
  if (possible.length > 1 && one && other) return failed(`Write ${one.way.plain} or ${other.way.plain}: \u201c${text.trim()}\u201d can mean both.`);
  return one?.is ?? failed('Write one length with its unit.');
}

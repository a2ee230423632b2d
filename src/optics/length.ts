// Lengths as people write them: focal lengths in millimetres, distances in metres or feet. The core keeps millimetres
// throughout. What can be read in two ways that are both possible is asked about, never guessed.
import { Distance, FocalLength } from '../kit/lengths.ts';
import { failed, got, type Result } from '../result.ts';
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
  return onlyOne(text, ways, Distance) ?? failed(`Enter the distance in ${unit === 'm' ? 'metres, from 0.05 to 500' : 'feet, from 0.17 to 1640'}.`);
}

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
  return onlyOne(text, ways, FocalLength) ?? failed('Enter the focal length in millimetres, from 4 to 2000.');
}

/** The one way to read the text that the range allows; a question where it allows two, and null where it allows none. */
function onlyOne(text: string, ways: readonly LengthRead[], range: typeof Distance | typeof FocalLength): Result<Millimetres> | null {
  const possible = ways.flatMap((way) => {
    const checked = fits(range, way.millimetres);
    return checked.ok ? [{ plain: way.plain, length: checked.value }] : [];
  });
  const [one, other] = possible;
  if (one && other) return failed(`Write ${one.plain} or ${other.plain}: \u201c${text.trim()}\u201d can mean both.`);
  return one ? got(one.length) : null;
}

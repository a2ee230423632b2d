// Lengths as people write them: focal lengths in millimetres, distances in metres or feet. One foot is 304.8 mm exactly
// (international yard and pound agreement, 1959). The core keeps millimetres throughout.
import { Distance, FocalLength } from '../kit/kit.ts';
import { millimetres, type Millimetres } from '../units.ts';
import { answer, cannot, fits, type Answer } from './answer.ts';
import { readNumber, writeNumber } from './quantity.ts';

export type DistanceUnit = 'm' | 'ft';

const MILLIMETRES_IN = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const;
type LengthUnit = keyof typeof MILLIMETRES_IN;

const SPELLINGS: readonly (readonly [RegExp, LengthUnit])[] = [
  [/(mm|millimet(re|er)s?)$/, 'mm'],
  [/(cm|centimet(re|er)s?)$/, 'cm'],
  [/(m|met(re|er)s?)$/, 'm'],
  [/(ft|foot|feet|')$/, 'ft'],
  [/(in|inch|inches|")$/, 'in'],
];

/** One number with its unit, or with the unit that goes without saying. */
function readLength(text: string, unsaid: LengthUnit): { value: number; unit: LengthUnit } | null {
  const spelt = SPELLINGS.find(([ending]) => ending.test(text));
  const value = readNumber(spelt ? text.replace(spelt[0], '') : text);
  return value === null ? null : { value, unit: spelt ? spelt[1] : unsaid };
}

/** A distance: "1.75", "1,75 m", "175 cm", "5.74 ft", "5 ft 9 in", `5' 9"`. Without a unit, the one in use. */
export function readDistance(text: string, unit: DistanceUnit): Answer<Millimetres> {
  const plain = text.trim().toLowerCase().replaceAll('\u2032', "'").replaceAll('\u2033', '"');
  const [, feet, inches] = /^(.+?(?:ft|feet|foot|'))\s*(.+?(?:in|inch|inches|"))$/.exec(plain) ?? [];
  const parts = feet === undefined || inches === undefined ? [plain] : [feet, inches];
  let sum = 0;
  for (const part of parts) {
    const read = readLength(part.trim(), unit);
    if (!read)
      return cannot(
        unit === 'm' ? 'Write the distance in metres, such as 1.75.' : 'Write the distance in feet, such as 5.74.',
      );
    sum += read.value * MILLIMETRES_IN[read.unit];
  }
  const checked = fits(Distance, sum);
  if (checked.ok) return checked;
  return cannot(unit === 'm' ? 'Enter the distance in metres, from 0.05 to 500.' : 'Enter the distance in feet, from 0.17 to 1640.');
}

/** A distance for the screen: centimetres matter below 10, not above 100. */
export function writeDistance(distance: Millimetres, unit: DistanceUnit): string {
  const value = distance / MILLIMETRES_IN[unit];
  return `${writeNumber(value, value < 10 ? 2 : value < 100 ? 1 : 0)} ${unit}`;
}

/** A focal length in millimetres; another unit is recognised and the millimetres are offered. */
export function readFocalLength(text: string): Answer<Millimetres> {
  const read = readLength(text.trim().toLowerCase(), 'mm');
  if (!read) return cannot('Write the focal length in millimetres, such as 85.');
  const meant = read.value * MILLIMETRES_IN[read.unit];
  if (read.unit !== 'mm' && fits(FocalLength, meant).ok) {
    return cannot(
      `Write the focal length in millimetres: ${writeNumber(read.value, 3)} ${read.unit} is ${writeNumber(meant, 1)}.`,
    );
  }
  if (read.unit === 'mm' && read.value > 0 && read.value < 2) {
    return cannot(
      `${writeNumber(read.value, 3)} looks like metres: write the focal length in millimetres, here ` +
        `${writeNumber(read.value * 1000, 0)}.`,
    );
  }
  const checked = fits(FocalLength, meant);
  return checked.ok ? answer(millimetres(checked.value)) : cannot('Enter the focal length in millimetres, from 4 to 2000.');
}

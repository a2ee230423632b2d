// Lengths as people type them, with their unit or without. Where a text is none, or could be two, it is no number: the form
// asks again.
import { readDistance, readFocalLength } from '../../optics/length.ts';
import { millimetres, type Millimetres } from '../../units.ts';
import { countryInUse } from '../../words/countryInUse.ts';

const NONE = millimetres(Number.NaN);

/** A bare number is in the unit that the country measures in. */
export function typedDistance(text: string): Millimetres {
  const read = readDistance(text, countryInUse.value.unit);
  return read.ok ? millimetres(Math.round(read.value)) : NONE;
}

/** In millimetres, whether they are said or not. */
export function typedFocalLength(text: string): Millimetres {
  const read = readFocalLength(text);
  return read.ok ? read.value : NONE;
}

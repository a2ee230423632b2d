// A distance as it stands in a field for distances: in the unit that the field's name says, which is the country's.
import { inUnit, type DistanceUnit } from '../../optics/writtenLength.ts';
import type { Millimetres } from '../../units.ts';
import { countryInUse } from '../../words/countryInUse.ts';
import { numberTyped } from './numberTyped.ts';

/** 4250 mm is "4.25": to the hundredth below ten, to the tenth above. Feet are finer, so that they come near to what is meant in metres. */
export function distanceTyped(length: Millimetres, unit: DistanceUnit = countryInUse.value.unit): string {
  const value = inUnit(length, unit);
  return numberTyped(value, unit === 'm' && value >= 10 ? 1 : 2);
}

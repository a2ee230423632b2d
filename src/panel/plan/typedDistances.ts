// Several distances in one field, apart by spaces, commas or semicolons: "2 4.25 m; 12 ft".
import type { Millimetres } from '../../units.ts';
import { typedDistance } from '../words/typedLength.ts';

/** Each distance once; null where one of them is none. */
export function typedDistances(text: string): readonly Millimetres[] | null {
  const distances = text
    .split(/[;；、]|[,，]\s+/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .flatMap(oneOrMore);
  return distances.every(Number.isFinite) ? [...new Set(distances)] : null;
}

/** "5 ft 9 in" is one; where a part is none as a whole, each number in it begins another. */
function oneOrMore(part: string): readonly Millimetres[] {
  const whole = typedDistance(part);
  return Number.isFinite(whole) ? [whole] : part.split(/\s+(?=[\d０-９.,．，])/).map(typedDistance);
}

// Numbers as people type them.
import { millimetres, type Millimetres } from '../../units.ts';

/** What a person typed as a number; the decimal comma, a true minus and spaces are welcome. Not a number: NaN. */
export function typedNumber(text: string): number {
  const cleaned = text.trim().replace(/\u2212/g, '-').replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(cleaned) ? Number(cleaned) : Number.NaN;
}

export const inMillimetresTyped = (metres: string): Millimetres => millimetres(typedNumber(metres) * 1000);

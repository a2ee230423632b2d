// What was typed in a field of the bench, and the value that it was read as.
import type { BenchFault } from '../../optics/fault.ts';
import type { DistanceUnit } from '../../optics/writtenLength.ts';
import type { Result } from '../../result.ts';
import { READ, type Quantity, type BenchValues } from './values.ts';

export interface BenchEntry<Value> {
  readonly text: string;
  readonly read: Result<Value, BenchFault>;
}
/** Null where a field is empty. */
export type BenchEntries = { readonly [Name in Quantity]: BenchEntry<BenchValues[Name]> | null };

export const entryOf = <Name extends Quantity>(name: Name, text: string, unit: DistanceUnit): BenchEntry<BenchValues[Name]> | null =>
  text.trim() === '' ? null : { text, read: READ[name](text, unit) };

/** Null where a field is empty or its text does not fit. */
export const valueOf = <Value>(entry: BenchEntry<Value> | null): Value | null => (entry?.read.ok ? entry.read.value : null);

/** One that may be missing, beside others that are told by one fault together. */
export const numberOf = (entry: BenchEntry<number> | null): number => valueOf(entry) ?? Number.NaN;

// The fields of the bench, and what the kit has, as they stand on the screen.
import { got } from '../../result.ts';
import type { StepSize } from '../../photographs/focusError.ts';
import type { StepWorth } from '../../optics/stepWorth.ts';
import type { DistanceUnit } from '../../optics/writtenLength.ts';
import { entryOf, type BenchEntries, type BenchEntry } from './entry.ts';
import { countryInUse } from '../../words/countryInUse.ts';
import type { BenchStore } from './typed.ts';
import { KIT_TRAITS, usualPicks, USUAL_VALUES, type KitTraits, type Picks } from './untyped.ts';
import { IN_UNIT, READ, writtenFor, type Quantity, type BenchValues } from './values.ts';

/** All that stands there. */
export interface Entered extends BenchEntries {
  readonly picks: Picks;
}

export function enteredAt(bench: BenchStore): Entered {
  const { known, picks: picked } = bench.value;
  const entries: Partial<BenchEntries> = { ...known?.entries, ...bench.value.entries };
  const picks = { ...usualPicks(countryInUse.value), ...known?.picks, ...picked };
  const worth = measuredWorthAt(bench);
  const values: Partial<BenchValues> = { ...USUAL_VALUES, ...known?.values, ...(worth !== null && { worth }) };
  const standing = <Name extends Quantity>(name: Name): BenchEntry<BenchValues[Name]> | null => {
    const entry: Partial<BenchEntries>[Name] = entries[name];
    if (entry !== undefined) return entry;
    const value: Partial<BenchValues>[Name] = values[name];
    return value === undefined ? null : { text: writtenFor(name, value, picks.unit), read: got(value) };
  };
  return { ...(Object.fromEntries(NAMES.map((name) => [name, standing(name)])) as unknown as BenchEntries), picks };
}
const NAMES = Object.keys(READ) as readonly Quantity[];

/** What a bracket measured a step to be worth; null where another one is entered, or a rig that it was not reckoned for. */
function measuredWorthAt({ value: { known, entries, picks } }: BenchStore): StepWorth | null {
  const otherwise = ['worth', 'aperture', 'converter'].some((name) => name in entries) || ['sensor', 'confusion'].some((name) => name in picks);
  return otherwise ? null : (known?.worth ?? null);
}

export const worthBy = (bench: BenchStore): StepSize['from'] => (measuredWorthAt(bench) === null ? 'estimate' : 'bracket');

export const traitsAt = (bench: BenchStore): KitTraits => ({ ...KIT_TRAITS, ...bench.value.known?.traits, ...bench.value.traits });

export function typeInto(bench: BenchStore, name: Quantity, text: string): void {
  const entry = entryOf(name, text, enteredAt(bench).picks.unit);
  bench.value = { ...bench.value, entries: { ...bench.value.entries, [name]: entry } };
}

export function pickIn(bench: BenchStore, patch: Partial<Picks>): void {
  const { entries, picks } = bench.value;
  const { unit } = patch;
  bench.value = { ...bench.value, entries: unit === undefined ? entries : { ...entries, ...inOtherUnit(entries, unit) }, picks: { ...picks, ...patch } };
}

/** What was measured stays as long as it was, and is written in the other unit; what was no length may be one in it. */
function inOtherUnit(entries: Partial<BenchEntries>, unit: DistanceUnit): Partial<BenchEntries> {
  return Object.fromEntries(
    IN_UNIT.flatMap((name) => {
      const entry = entries[name];
      if (!entry) return [];
      const { read, text } = entry;
      return [[name, read.ok ? { text: writtenFor(name, read.value, unit), read } : entryOf(name, text, unit)]];
    }),
  );
}

export function tickIn(bench: BenchStore, patch: Partial<KitTraits>): void {
  bench.value = { ...bench.value, traits: { ...bench.value.traits, ...patch } };
}

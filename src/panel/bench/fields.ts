// The fields of the bench, and what the kit has, as they stand on the screen.
import type { BenchStore } from './typed.ts';
import { KIT_TRAITS, UNTYPED, type KitTraits, type Typed } from './untyped.ts';

export const typedAt = (bench: BenchStore): Typed => ({ ...UNTYPED, ...bench.value.known?.typed, ...bench.value.typed });
export const traitsAt = (bench: BenchStore): KitTraits => ({ ...KIT_TRAITS, ...bench.value.known?.traits, ...bench.value.traits });

export function typeInto(bench: BenchStore, patch: Partial<Typed>): void {
  bench.value = { ...bench.value, typed: { ...bench.value.typed, ...patch } };
}
export function tickIn(bench: BenchStore, patch: Partial<KitTraits>): void {
  bench.value = { ...bench.value, traits: { ...bench.value.traits, ...patch } };
}

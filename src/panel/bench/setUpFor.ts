// What was set up at the bench goes with a sweep only where it was set up for it.
import type { Kit } from '../../kit/kit.ts';
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import { noteIn, type BenchStore } from './typed.ts';

/** The bench that was noted for this situation; nothing where there is none or it was for another. */
export function setUpFor(situation: string, kit: Kit, bench: BenchStore): { readonly bench?: BenchRecord } {
  const one = kit.situations.find(({ id }) => id === situation);
  const { noted } = bench.peek();
  if (!one || !noted) return {};
  const { body, lens, focalLength, distance } = noted.subject;
  const named = (all: readonly { readonly id: string; readonly name: string }[], id: string) => all.find((each) => each.id === id)?.name;
  const same = one.focalLength === focalLength && one.distance === distance && named(kit.bodies, one.body) === body && named(kit.lenses, one.lens) === lens;
  return same ? { bench: noted.bench } : {};
}

/** The sweep has it now; the next one is set up anew. */
export const forget = (bench: BenchStore): void => noteIn(bench, null);

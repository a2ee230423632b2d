// What was set up at the bench goes with a sweep only where it was set up for it.
import type { Unnamed } from '../../sweep/plan.ts';
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import { noteIn, type BenchStore } from './typed.ts';

/** The bench that was noted for these parts, their distance worked out; nothing where there is none or it was for another. */
export function setUpFor({ body, lens, focalLength, distance }: Unnamed, bench: BenchStore): { readonly bench?: BenchRecord } {
  const { noted } = bench.peek();
  if (!noted) return {};
  const { subject } = noted;
  const same =
    subject.focalLength === focalLength && subject.distance === distance && subject.body === (body?.name ?? '') && subject.lens === (lens?.name ?? '');
  return same ? { bench: noted.bench } : {};
}

/** The sweep has it now; the next one is set up anew. */
export const forget = (bench: BenchStore): void => noteIn(bench, null);

// A lens, and the converter that may stand between it and the body. Two copies of one lens are two records.
import * as v from 'valibot';
import type { Moment } from '../units.ts';
import { fault } from './fault.ts';
import { Distance, FocalLength } from './lengths.ts';
import { Engraved, kept, Name } from './words.ts';

const aperture = v.pipe(v.number(fault('no aperture')), v.minValue(0.5, fault('aperture too wide')), v.maxValue(64, fault('aperture too narrow')));

/** Shortest and longest focal length; equal where the lens does not zoom. */
export const FocalRange = v.pipe(
  v.object({ from: FocalLength, to: FocalLength }),
  v.check(({ from, to }) => from <= to, fault('focal lengths turned round')),
);
export type FocalRange = v.InferOutput<typeof FocalRange>;

export const Lens = v.object({
  ...kept,
  name: Name,
  /** As the body writes it into photographs; copies of one lens have the same. */
  model: Engraved,
  serial: Engraved,
  focal: v.nullable(FocalRange),
  /** Widest f-number at the shortest and at the longest focal length. */
  widest: v.nullable(v.object({ from: aperture, to: aperture })),
  closest: v.nullable(Distance),
});
export type Lens = v.InferOutput<typeof Lens>;

export const Converter = v.object({
  ...kept,
  name: Name,
  factor: v.pipe(v.number(fault('no factor')), v.minValue(0.5, fault('factor too small')), v.maxValue(4, fault('factor too large'))),
});
export type Converter = v.InferOutput<typeof Converter>;

/** What a lens starts as when nothing but its name is known. */
export const newLens = (id: string, name: string, changed: Moment): Lens => ({
  id,
  changed,
  retired: null,
  name,
  model: null,
  serial: null,
  focal: null,
  widest: null,
  closest: null,
});

export const newConverter = (id: string, name: string, factor: number, changed: Moment): Converter => ({
  id,
  changed,
  retired: null,
  name,
  factor,
});

export const zooms = (lens: Lens): boolean => lens.focal !== null && lens.focal.from < lens.focal.to;

/** Widest f-number at a focal length: between the ends of a zoom, in proportion (bodies differ, no source). */
export function widestAt(lens: Lens, focalLength: number): number | null {
  const { focal, widest } = lens;
  if (!widest) return null;
  if (!focal || focal.to === focal.from) return widest.from;
  const share = Math.min(1, Math.max(0, (focalLength - focal.from) / (focal.to - focal.from)));
  return widest.from + share * (widest.to - widest.from);
}

// A body that keeps one value for each end of a zoom, and works out what lies between. By which law is not published, so
// both likely ones are shown, linear in the focal length and linear in its logarithm, and held against what was measured.
import type { Scale } from '../../sweep/scale.ts';
import type { Band, Fit } from './band.ts';
import { fitOf } from './band.ts';
import { oneValue, type Choice, type Weighing } from './oneValue.ts';

export interface StoredEnd {
  readonly focalLength: number;
  readonly value: number;
}

/** The value at a focal length between two stored ones; the ends must differ. */
export function interpolated(wide: StoredEnd, tele: StoredEnd, focalLength: number): { linear: number; logarithmic: number } {
  const at = (share: number): number => wide.value + share * (tele.value - wide.value);
  return {
    linear: at((focalLength - wide.focalLength) / (tele.focalLength - wide.focalLength)),
    logarithmic: at(Math.log(focalLength / wide.focalLength) / Math.log(tele.focalLength / wide.focalLength)),
  };
}

/** What the body would use between the ends, by either law, against the band measured there. */
interface Middle {
  readonly band: Band;
  readonly linear: Fit & { readonly value: number };
  readonly logarithmic: Fit & { readonly value: number };
}

export interface TwoValues {
  readonly wide: Choice;
  readonly tele: Choice;
  readonly middles: readonly Middle[];
}

/** Each end is chosen by what was measured at it; null while one end was not measured. */
export function twoValues(scale: Scale, range: { from: number; to: number }, bands: readonly Band[], weighing: Weighing): TwoValues | null {
  const at = (focalLength: number): Band[] => bands.filter((band) => band.focalLength === focalLength);
  const wide = oneValue(scale, at(range.from), weighing);
  const tele = oneValue(scale, at(range.to), weighing);
  if (!wide || !tele || range.from >= range.to) return null;
  const ends = [
    { focalLength: range.from, value: wide.value },
    { focalLength: range.to, value: tele.value },
  ] as const;
  const middles = bands
    .filter(({ focalLength }) => focalLength > range.from && focalLength < range.to)
    .map((band) => {
      const { linear, logarithmic } = interpolated(...ends, band.focalLength);
      const fit = (value: number) => ({ ...fitOf(value, band), value });
      return { band, linear: fit(linear), logarithmic: fit(logarithmic) };
    });
  return { wide, tele, middles };
}

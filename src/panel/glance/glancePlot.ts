// One situation as a strip in pixels: the whole scale of its body as a line, on it the band, the centre with its interval, and what
// is entered. All strips of a body are laid out alike, so that one look runs down them.
import type { Shelved } from '../../logbook/shelf.ts';
import { isOnScale, writeSteps, type Scale } from '../../sweep/scale.ts';
import { axisOf } from '../strip/geometry.ts';
import { wholeOf } from '../strip/window.ts';

export interface GlancePlot {
  /** The ends of the scale, and its zero where it has one. */
  readonly left: number;
  readonly right: number;
  readonly zero: number | null;
  readonly band: { readonly x: number; readonly width: number } | null;
  readonly centre: number | null;
  readonly interval: { readonly from: number; readonly to: number } | null;
  readonly entered: number | null;
  /** The side on which the centre lies off the scale. */
  readonly beyond: 'left' | 'right' | null;
}

/** Labels of the scale that all strips share: its ends, and what lies at a half and in the middle between them. */
export function glanceLabels(scale: Scale, width: number): { readonly x: number; readonly text: string }[] {
  const { xOf } = axisOf(scale, wholeOf(scale), width);
  const quarters = [0, 0.25, 0.5, 0.75, 1].map((share) => scale.min + share * (scale.max - scale.min));
  return quarters.filter((value) => isOnScale(scale, value)).map((value) => ({ x: xOf(value), text: writeSteps(value) }));
}

/** What lies off the scale ends at its ends. */
export function glancePlotOf({ measured, entered }: Pick<Shelved, 'measured' | 'entered'>, scale: Scale, width: number): GlancePlot {
  const { xOf, cell } = axisOf(scale, wholeOf(scale), width);
  const x = (value: number): number => xOf(Math.min(scale.max, Math.max(scale.min, value)));
  const { low = null, high = null, centre = null, interval = null } = measured ?? {};
  const band = low === null || high === null || high < scale.min || low > scale.max ? null : { from: x(low) - cell / 2, to: x(high) + cell / 2 };
  return {
    left: xOf(scale.min),
    right: xOf(scale.max),
    zero: isOnScale(scale, 0) ? xOf(0) : null,
    band: band && { x: band.from, width: band.to - band.from },
    centre: centre === null || centre < scale.min || centre > scale.max ? null : x(centre),
    interval: interval && { from: x(interval.from), to: x(interval.to) },
    entered: entered ? x(entered.value) : null,
    beyond: centre === null ? null : centre < scale.min ? 'left' : centre > scale.max ? 'right' : null,
  };
}

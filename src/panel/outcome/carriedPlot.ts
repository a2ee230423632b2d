// Where the scale, the visible part of a band, its carried part and its centre stand in the drawing of a width transfer. Past
// the scale there is room for whatever lies there.
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import type { Scale } from '../../sweep/scale.ts';

export interface CarriedPlot {
  readonly width: number;
  readonly height: number;
  /** From one limit to the other. */
  readonly scale: Span;
  /** Where the light held at critical focus; null where it never came on. */
  readonly held: Span | null;
  /** What the width says lies further out. */
  readonly carried: Span;
  readonly interval: Span;
  readonly centre: number;
}

interface Span {
  readonly x: number;
  readonly width: number;
}

const WIDTH = 300;
const HEIGHT = 66;
const MARGIN = 8;

export function carriedPlot({ side, visible, halfWidth, centre, interval }: CarriedOutcome, { min, max, step }: Scale): CarriedPlot {
  const edge = visible === null ? null : visible + (side === 'high' ? -step : step) / 2;
  const limit = side === 'high' ? max : min;
  const [inner, outer] = side === 'high' ? [centre - halfWidth, centre + halfWidth] : [centre + halfWidth, centre - halfWidth];
  const all = [min, max, inner, outer, interval.from, interval.to];
  const from = Math.min(...all);
  const perStep = (WIDTH - 2 * MARGIN) / (Math.max(...all) - from);
  const at = (value: number): number => MARGIN + (value - from) * perStep;
  const span = (one: number, other: number): Span => ({ x: at(Math.min(one, other)), width: Math.abs(other - one) * perStep });
  return {
    width: WIDTH,
    height: HEIGHT,
    scale: span(min, max),
    held: edge === null ? null : span(edge, limit),
    carried: edge === null ? span(inner, outer) : span(limit, outer),
    interval: span(interval.from, interval.to),
    centre: at(centre),
  };
}

// Blur along the ramp in pixels of a chart: depth to the right, from in front of the target to behind it, sharper upwards.
import type { FocusReading } from '../../photographs/focusReading.ts';

export interface RampPlot {
  readonly height: number;
  readonly readings: readonly { readonly x: number; readonly y: number }[];
  /** Where focus fell, and its interval. */
  readonly focus: { readonly x: number; readonly from: number; readonly to: number };
  readonly target: number;
  /** The depth of field, as far as the ramp goes. */
  readonly depth: { readonly from: number; readonly to: number };
  /** Millimetres at both ends. */
  readonly ends: readonly [{ readonly x: number; readonly at: number }, { readonly x: number; readonly at: number }];
}

const HEIGHT = 130;
/** Room below for the numbers. */
const BELOW = 30;
const EDGE = 8;

export function rampPlotOf({ ramp, depth }: FocusReading, width: number): RampPlot {
  const depths = [...ramp.readings.map((reading) => reading.depth), 0];
  const [near, far] = [Math.min(...depths), Math.max(...depths)];
  const most = Math.max(...ramp.readings.map(({ spread }) => spread), 1e-6);
  const within = (at: number): number => Math.min(far, Math.max(near, at));
  const x = (at: number): number => EDGE + ((within(at) - near) / (far - near || 1)) * (width - 2 * EDGE);
  const y = (spread: number): number => EDGE + (spread / most) * (HEIGHT - BELOW - 2 * EDGE);
  return {
    height: HEIGHT,
    readings: ramp.readings.map((reading) => ({ x: x(reading.depth), y: y(reading.spread) })),
    focus: { x: x(ramp.error), from: x(ramp.interval.low), to: x(ramp.interval.high) },
    target: x(0),
    depth: { from: x(-depth.front), to: x(depth.behind === 'infinite' ? Infinity : depth.behind) },
    ends: [
      { x: EDGE, at: near },
      { x: width - EDGE, at: far },
    ],
  };
}

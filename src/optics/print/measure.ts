// How large everything on the target is, for one situation: bars wide enough for the sensor to draw clearly and for a
// printer to print, and a field half as large again as what the AF area sees, so that the area never finds the
// field's own edge.
import { millimetres, type Millimetres } from '../../units.ts';
import { failed, got, type Result } from '../../result.ts';
import type { BenchFault } from '../fault.ts';
import type { Magnification } from '../quantity.ts';
import type { Sensor } from '../sensor.ts';
import { areaAtTarget } from '../squareness.ts';
import { barAt, barIndex } from './barSeries.ts';
import { MARK_BOX } from './marks.ts';
import { BAR_COUNTS, type BarCount } from './sequence.ts';

/** Pixels one bar covers on the sensor where there is a choice: drawn clearly, yet many to an AF area. */
const WANTED_PIXELS = 10;
/** Fewer blur into grey. */
const LEAST_PIXELS = 5;
/** What an office printer prints cleanly. */
const LEAST_BAR = 0.3;
/** Larger than a wall. */
const LARGEST_FIELD = 2500;

export interface TargetCase {
  readonly magnification: Magnification;
  readonly pitch: Millimetres;
  /** The AF area on the sensor, edge to edge. */
  readonly area: Millimetres;
  readonly sensor: Sensor;
}

/** What follows from the bars alone, and so can be read off the print. */
export interface TargetSizes {
  readonly bars: BarCount;
  /** Place of the bar's width in the series. */
  readonly index: number;
  readonly bar: Millimetres;
  /** Side of the square field of bars. */
  readonly field: Millimetres;
  /** Box of each leaning square. */
  readonly square: Millimetres;
  /** White between the parts. */
  readonly gap: Millimetres;
}

export interface TargetMeasure extends TargetSizes {
  /** What the sensor sees at the target. */
  readonly seen: { readonly width: Millimetres; readonly height: Millimetres };
}

export function measureTarget({ magnification: m, pitch, area, sensor }: TargetCase): Result<TargetMeasure, BenchFault> {
  const covered = 1.5 * areaAtTarget(area, m);
  const wanted = Math.max((WANTED_PIXELS * pitch) / m, LEAST_BAR);
  const least = Math.max((LEAST_PIXELS * pitch) / m, LEAST_BAR);
  const fitting = BAR_COUNTS.filter((count) => covered / count >= least);
  const bars = fitting.reduce<BarCount>((best, next) => (mismatch(covered, next, wanted) < mismatch(covered, best, wanted) ? next : best), 31);
  const index = barIndex(millimetres(Math.max(covered / bars, least)));
  if (index === null || barAt(index) * bars > LARGEST_FIELD) return failed({ is: 'target too large' });
  return got({ ...sizesOf(bars, index), seen: { width: millimetres(sensor.width / m), height: millimetres(sensor.height / m) } });
}

export function sizesOf(bars: BarCount, index: number): TargetSizes {
  const bar = barAt(index);
  return {
    bars,
    index,
    bar,
    field: millimetres(bar * bars),
    square: millimetres(MARK_BOX * bar),
    gap: millimetres(Math.max(1, 1.5 * bar)),
  };
}

const mismatch = (covered: number, count: BarCount, wanted: number): number => Math.abs(Math.log(covered / count / wanted));

// How far the blur of an edge reaches, and how far from it the next thing stands. Both are read off the slope of the edge spread,
// smoothed no more than its noise asks for. The bounds are common practice, no source; a Gaussian blur has fallen to a tenth of its
// height at 2.15 standard deviations.
import { BINS, meanOf, type EdgeSpread } from './edgeSpread.ts';

export interface EdgeExtent {
  /** From the edge to where its slope has fallen to a tenth, on the wider side; in pixels. */
  readonly lobe: number;
  /** From the edge to the nearest other thing, or to the end of what was cut; in pixels. */
  readonly clear: number;
  /** Whether another thing stands there. */
  readonly beside: boolean;
}

/** Widths to smooth over, in pixels. */
const SMOOTHING = [1, 2, 4, 8] as const;
/** Noise of the slope that is borne, as a share of its peak. */
const BORNE = 0.04;
const LOBE_ENDS = 0.1;
const OTHER_BEGINS = 0.15;
/** Halos of sharpening are a part of the edge: so many lobes and pixels are skipped before another thing is looked for. */
const HALO = { lobes: 1.5, pixels: 2 };

/** Null where no slope stands out, or its blur does not end within the strip. */
export function edgeExtent(spread: EdgeSpread, reach: number): EdgeExtent | null {
  const rows = spread.counts.reduce((sum, count) => sum + count, 0);
  for (const width of SMOOTHING.filter((each) => 4 * each <= reach)) {
    const slope = slopeOf(spread.light, width * BINS);
    const peak = peakOf(slope, reach);
    const noise = spread.noise * Math.sqrt(2 / (rows * width));
    if (noise > BORNE * Math.abs(slope[peak]!)) continue;
    return extentOf(slope, peak, noise, width);
  }
  return null;
}

/** At each border between two bins, the mean of so many bins after it less the mean of as many before it. */
function slopeOf(light: Float64Array, bins: number): Float64Array {
  return Float64Array.from({ length: light.length - 2 * bins + 1 }, (_, at) => meanOf(light, at + bins, at + 2 * bins) - meanOf(light, at, at + bins));
}

/** Steepest place of the middle third. */
function peakOf(slope: Float64Array, reach: number): number {
  const middle = (slope.length - 1) / 2;
  const within = Math.floor((reach * BINS) / 3);
  let peak = Math.round(middle);
  for (let at = Math.ceil(middle - within); at <= middle + within; at++) {
    if (at >= 0 && at < slope.length && Math.abs(slope[at]!) > Math.abs(slope[peak]!)) peak = at;
  }
  return peak;
}

function extentOf(slope: Float64Array, peak: number, noise: number, smoothed: number): EdgeExtent | null {
  const height = slope[peak]!;
  const middle = (slope.length - 1) / 2;
  const ends = [-1, 1].map((way) => {
    let at = peak;
    while (at >= 0 && at < slope.length && slope[at]! / height >= LOBE_ENDS) at += way;
    return at;
  });
  if (ends[0]! < 0 || ends[1]! >= slope.length) return null;
  const lobe = Math.max(middle - ends[0]!, ends[1]! - middle) / BINS;
  const quiet = (HALO.lobes * lobe + HALO.pixels) * BINS;
  const other = Math.max(OTHER_BEGINS * Math.abs(height), 5 * noise);
  let nearest = Number.POSITIVE_INFINITY;
  for (let at = 0; at < slope.length; at++) {
    const away = Math.abs(at - middle);
    if (away > quiet && away < nearest && Math.abs(slope[at]!) > other) nearest = away;
  }
  const beside = nearest < Number.POSITIVE_INFINITY;
  return { lobe, clear: beside ? nearest / BINS - smoothed : middle / BINS + smoothed, beside };
}

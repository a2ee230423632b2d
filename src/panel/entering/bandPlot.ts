// Bands in pixels: corrections upwards as everywhere, focal length to the right, or distance where all were measured at
// one focal length. Bands that would lie upon each other stand side by side.
import type { Band } from '../../logbook/entering/band.ts';
import { interpolated } from '../../logbook/entering/twoValues.ts';
import type { MemoryPlace } from '../../logbook/entering/advice.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import type { Level } from '../parts/levels.tsx';

interface PlottedBand {
  readonly id: string;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly centre: number;
  readonly inside: boolean;
}

export interface BandPlot {
  readonly height: number;
  readonly levels: readonly Level[];
  readonly bands: readonly PlottedBand[];
  readonly marks: readonly { readonly x: number; readonly text: string }[];
  readonly along: 'focal length' | 'distance';
  /** What the body will use; for two values by the other law as well. */
  readonly line: string;
  readonly logarithmic: string;
}

const HEIGHT = 190;
const [LEFT, RIGHT, TOP, BOTTOM] = [34, 26, 10, 24];
const BESIDE = 15;

/** Null where nothing is to be entered yet. */
export function bandPlotOf({ evidence, one, two }: MemoryPlace, width: number): BandPlot | null {
  const bands = evidence.map(({ band }) => band);
  if (!one || bands.length === 0) return null;
  const lengths = new Set(bands.map(({ focalLength }) => focalLength));
  const along: BandPlot['along'] = lengths.size > 1 ? 'focal length' : 'distance';
  const placeOf = (band: Band): number => (along === 'focal length' ? band.focalLength : band.distance);
  const places = bands.map(placeOf);
  const x = scaleOf(Math.min(...places), Math.max(...places), width);
  const stored = two ? [two.wide.value, two.tele.value] : [one.value];
  const low = Math.min(...bands.map((band) => band.low), ...stored) - 1;
  const high = Math.max(...bands.map((band) => band.high), ...stored) + 1;
  const y = (value: number): number => TOP + ((high - value) / (high - low)) * (HEIGHT - TOP - BOTTOM);
  const fits = new Map(fitsOf({ one, two }));
  const every = Math.max(1, Math.ceil((high - low) / 7));
  const first = Math.ceil(low / every) * every;
  return {
    height: HEIGHT,
    along,
    levels: Array.from({ length: Math.floor((high - first) / every) + 1 }, (_, at) => first + at * every).map((value) => ({
      y: y(value),
      text: writeSteps(value),
    })),
    bands: bands.map((band) => {
      const beside = bands.filter((other) => placeOf(other) === placeOf(band));
      const shift = (beside.indexOf(band) - (beside.length - 1) / 2) * BESIDE;
      return {
        id: band.id,
        x: x(placeOf(band)) + shift,
        top: y(band.high + 0.5),
        bottom: y(band.low - 0.5),
        centre: y(band.centre),
        inside: fits.get(band.id) ?? false,
      };
    }),
    marks: [...new Set(places)].map((at) => ({ x: x(at), text: words('entering').chart.mark[along](at) })),
    line: two ? `M${x(Math.min(...places))} ${y(two.wide.value)}${curve(two, places, x, y, 'linear')}` : `M${LEFT} ${y(one.value)}H${width}`,
    logarithmic: two ? `M${x(Math.min(...places))} ${y(two.wide.value)}${curve(two, places, x, y, 'logarithmic')}` : '',
  };
}

const fitsOf = ({ one, two }: Pick<MemoryPlace, 'one' | 'two'>): [string, boolean][] =>
  two
    ? [
        ...[...two.wide.fits, ...two.tele.fits].map(({ band, inside }): [string, boolean] => [band.id, inside]),
        ...two.middles.map(({ band, linear, logarithmic }): [string, boolean] => [band.id, linear.inside && logarithmic.inside]),
      ]
    : (one?.fits ?? []).map(({ band, inside }) => [band.id, inside]);

/** By the logarithm, so that the two ends of a zoom and near and far stand well apart. */
function scaleOf(from: number, to: number, width: number): (at: number) => number {
  const [left, right] = [LEFT + RIGHT, width - RIGHT];
  return (at) => (from === to ? (left + right) / 2 : left + (Math.log(at / from) / Math.log(to / from)) * (right - left));
}

function curve(
  two: NonNullable<MemoryPlace['two']>,
  places: readonly number[],
  x: (at: number) => number,
  y: (value: number) => number,
  law: 'linear' | 'logarithmic',
): string {
  const [from, to] = [Math.min(...places), Math.max(...places)];
  const ends = [
    { focalLength: from, value: two.wide.value },
    { focalLength: to, value: two.tele.value },
  ] as const;
  return Array.from({ length: 20 }, (_, at) => from + ((at + 1) / 20) * (to - from))
    .map((at) => `L${x(at)} ${y(interpolated(...ends, at)[law])}`)
    .join('');
}

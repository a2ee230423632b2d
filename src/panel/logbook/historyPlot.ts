// The history of one situation in pixels: time to the right, corrections upwards, each measurement with its interval, and the line
// of its drift with what is in doubt about it.
import type { History } from '../../logbook/history.ts';
import { centreAt, trendOf, type Trend } from '../../logbook/trend.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { Moment } from '../../units.ts';
import type { Level } from '../parts/levels.tsx';
import { monthsBetween } from './months.ts';

export interface Plot {
  readonly height: number;
  readonly levels: readonly Level[];
  readonly measured: readonly { readonly id: string; readonly x: number; readonly y: number; readonly from: number; readonly to: number }[];
  readonly entered: readonly { readonly id: string; readonly x: number; readonly y: number }[];
  /** From centre to centre; empty where a trend says more. */
  readonly drift: string;
  /** How the centre drifted; null where too little was measured. */
  readonly trend: (Trend & { readonly path: string; readonly doubt: string }) | null;
  /** Where months or years begin. */
  readonly months: readonly number[];
  /** The first and the last day, below the ends; in a narrow chart the last alone. */
  readonly days: readonly { readonly x: number; readonly at: Moment; readonly anchor: 'start' | 'end' }[];
  /** Through the values entered, as they stood in the camera. */
  readonly inForce: string;
}

const HEIGHT = 160;
/** Room below for the days. */
const DAYS = 18;
/** Pixels: in less the two days would lie over each other, and the last one tells more. */
const BOTH_DAYS = 230;
const LEFT = 34;
const EDGE = 10;

/** Null where there is nothing that changes over time: fewer than two points. */
export function plotOf({ measured, entries }: History, width: number): Plot | null {
  const known = measured.flatMap(({ id, at, centre, chosen, interval }) => {
    const value = centre ?? chosen;
    return value === null ? [] : [{ id, at, value, from: interval?.from ?? value, to: interval?.to ?? value }];
  });
  const times = [...known, ...entries].map(({ at }) => at);
  if (times.length < 2) return null;
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const values = [...known.flatMap(({ from, to }) => [from, to]), ...entries.map(({ value }) => value)];
  const low = Math.floor(Math.min(...values)) - 1;
  const high = Math.ceil(Math.max(...values)) + 1;
  const x = (at: number): number => LEFT + ((at - first) / (last - first || 1)) * (width - LEFT - EDGE);
  const y = (value: number): number => EDGE + ((high - Math.min(high, Math.max(low, value))) / (high - low)) * (HEIGHT - DAYS - 2 * EDGE);
  const trend = trendOf(measured);
  const entered = entries.map(({ id, at, value }) => ({ id, x: x(at), y: y(value) }));
  const every = Math.max(1, Math.ceil((high - low) / 6));
  const levels = Array.from({ length: Math.floor((high - low) / every) + 1 }, (_, index) => low + index * every);
  return {
    height: HEIGHT,
    levels: levels.map((value) => ({ y: y(value), text: writeSteps(value) })),
    measured: known.map(({ id, at, value, from, to }) => ({ id, x: x(at), y: y(value), from: y(from), to: y(to) })),
    drift: trend ? '' : pathOf(known.map(({ at, value }) => [x(at), y(value)])),
    trend: trend && { ...trend, ...drawn(trend, x, y) },
    months: monthsBetween(first as Moment, last as Moment, width - LEFT - EDGE).map(x),
    days: [...(width < BOTH_DAYS ? [] : [{ x: LEFT, at: first as Moment, anchor: 'start' } as const]), { x: width - EDGE, at: last as Moment, anchor: 'end' }],
    entered,
    inForce:
      entered.map((point, index) => (index === 0 ? `M${point.x} ${point.y}` : `H${point.x}V${point.y}`)).join('') +
      (entered.length > 0 ? `H${width - EDGE}` : ''),
  };
}

/** What is in doubt bends outwards from the middle: it is drawn through so many points. */
const POINTS = 16;

/** What lies off the chart ends at its edge, as every height does. */
function drawn(trend: Trend, x: (at: number) => number, y: (value: number) => number): { path: string; doubt: string } {
  const times = Array.from({ length: POINTS + 1 }, (_, index) => trend.from + (index / POINTS) * (trend.to - trend.from));
  const lies = times.map((at) => ({ at: x(at), ...centreAt(trend, at) }));
  const edge = [...lies.map(({ at, to }) => [at, y(to)] as const), ...lies.toReversed().map(({ at, from }) => [at, y(from)] as const)];
  return { path: pathOf(lies.map(({ at, value }) => [at, y(value)])), doubt: `${pathOf(edge)}Z` };
}

const pathOf = (points: readonly (readonly [number, number])[]): string => points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`).join('');

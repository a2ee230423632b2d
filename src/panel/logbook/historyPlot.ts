// The history of one situation in pixels: time to the right, corrections upwards, each measurement with its interval.
import type { History } from '../../logbook/history.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { Moment } from '../../units.ts';
import type { Level } from '../parts/levels.tsx';

export interface Plot {
  readonly height: number;
  readonly levels: readonly Level[];
  readonly measured: readonly { readonly id: string; readonly x: number; readonly y: number; readonly from: number; readonly to: number }[];
  readonly entered: readonly { readonly id: string; readonly x: number; readonly y: number }[];
  /** From centre to centre: how the measurements have drifted. */
  readonly drift: string;
  /** The first and the last day, below the ends. */
  readonly days: readonly { readonly x: number; readonly at: Moment; readonly anchor: 'start' | 'end' }[];
  /** Through the values entered, as they stood in the camera. */
  readonly inForce: string;
}

const HEIGHT = 160;
/** Room below for the days. */
const DAYS = 18;
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
  const y = (value: number): number => EDGE + ((high - value) / (high - low)) * (HEIGHT - DAYS - 2 * EDGE);
  const entered = entries.map(({ id, at, value }) => ({ id, x: x(at), y: y(value) }));
  const every = Math.max(1, Math.ceil((high - low) / 6));
  const levels = Array.from({ length: Math.floor((high - low) / every) + 1 }, (_, index) => low + index * every);
  return {
    height: HEIGHT,
    levels: levels.map((value) => ({ y: y(value), text: writeSteps(value) })),
    measured: known.map(({ id, at, value, from, to }) => ({ id, x: x(at), y: y(value), from: y(from), to: y(to) })),
    drift: known.map(({ at, value }, index) => `${index === 0 ? 'M' : 'L'}${x(at)} ${y(value)}`).join(''),
    days: [
      { x: LEFT, at: first as Moment, anchor: 'start' },
      { x: width - EDGE, at: last as Moment, anchor: 'end' },
    ],
    entered,
    inForce:
      entered.map((point, index) => (index === 0 ? `M${point.x} ${point.y}` : `H${point.x}V${point.y}`)).join('') +
      (entered.length > 0 ? `H${width - EDGE}` : ''),
  };
}

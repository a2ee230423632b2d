// The history of one situation in pixels: time to the right, corrections upwards, each measurement with its interval.
import type { History } from '../../logbook/history.ts';
import { writeSteps } from '../../sweep/scale.ts';

export interface Plot {
  readonly height: number;
  readonly levels: readonly { readonly y: number; readonly text: string }[];
  readonly measured: readonly { readonly id: string; readonly x: number; readonly y: number; readonly from: number; readonly to: number }[];
  readonly entered: readonly { readonly id: string; readonly x: number; readonly y: number }[];
  /** Through the values entered, as they stood in the camera. */
  readonly inForce: string;
}

const HEIGHT = 140;
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
  const y = (value: number): number => EDGE + ((high - value) / (high - low)) * (HEIGHT - 2 * EDGE);
  const entered = entries.map(({ id, at, value }) => ({ id, x: x(at), y: y(value) }));
  const every = Math.max(1, Math.ceil((high - low) / 6));
  const levels = Array.from({ length: Math.floor((high - low) / every) + 1 }, (_, index) => low + index * every);
  return {
    height: HEIGHT,
    levels: levels.map((value) => ({ y: y(value), text: writeSteps(value) })),
    measured: known.map(({ id, at, value, from, to }) => ({ id, x: x(at), y: y(value), from: y(from), to: y(to) })),
    entered,
    inForce: entered.map((point, index) => (index === 0 ? `M${point.x} ${point.y}` : `H${point.x}V${point.y}`)).join('') + (entered.length > 0 ? `H${width - EDGE}` : ''),
  };
}

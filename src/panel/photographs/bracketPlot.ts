// A bracket in pixels of a chart: corrections to the right, focus behind the target upwards.
import type { BracketSeries, BracketTold } from '../../photographs/series/bracketSeries.ts';
import { writeSteps } from '../../sweep/scale.ts';

export interface BracketPlot {
  readonly height: number;
  readonly points: readonly { readonly x: number; readonly y: number; readonly apart: boolean }[];
  readonly line: string;
  /** Where the line lies with 95 %. */
  readonly band: string;
  /** Critical focus: the target, or where live view put it. */
  readonly target: number;
  /** The centre and its interval, as far as the chart goes. */
  readonly centre: { readonly x: number; readonly from: number; readonly to: number };
  readonly marks: readonly { readonly x: number; readonly text: string }[];
}

const HEIGHT = 170;
/** Room below for the corrections, and round all of it. */
const BELOW = 22;
const EDGE = 14;
const PIECES = 24;
/** Room for one correction. */
const MARK = 30;

export function bracketPlotOf({ shots, reference }: BracketSeries, { measure }: BracketTold, width: number): BracketPlot {
  const corrections = [...new Set(shots.map(({ correction }): number => correction))].sort((a, b) => a - b);
  const [least, most] = [corrections[0] ?? 0, corrections.at(-1) ?? 0];
  // A centre that lies beyond the shots is shown, if it is not too far to leave room for them.
  const span = most - least || 1;
  const [from, to] = [Math.max(least - span, Math.min(least, measure.centre.value)), Math.min(most + span, Math.max(most, measure.centre.value))];
  const along = Array.from({ length: PIECES + 1 }, (_, piece) => from + (piece / PIECES) * (to - from));
  const lines = along.map((correction) => ({ correction, ...measure.lineAt(correction) }));
  const zero = reference?.value ?? 0;
  const heights = [...shots.map(({ error }) => error.value), ...lines.flatMap(({ low, high }) => [low, high]), zero];
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const x = (correction: number): number => EDGE + ((Math.min(to, Math.max(from, correction)) - from) / (to - from)) * (width - 2 * EDGE);
  const y = (error: number): number => EDGE + ((high - error) / (high - low || 1)) * (HEIGHT - BELOW - 2 * EDGE);
  const at = (correction: number, error: number): string => `${x(correction).toFixed(1)} ${y(error).toFixed(1)}`;
  return {
    height: HEIGHT,
    points: shots.map(({ correction, error }, place) => ({ x: x(correction), y: y(error.value), apart: measure.apart.includes(place) })),
    line: `M${lines.map(({ correction, value }) => at(correction, value)).join('L')}`,
    band: `M${[...lines.map((one) => at(one.correction, one.high)), ...lines.map((one) => at(one.correction, one.low)).toReversed()].join('L')}Z`,
    target: y(zero),
    centre: { x: x(measure.centre.value), from: x(measure.centre.low), to: x(measure.centre.high) },
    marks: roomy(corrections.map((correction) => ({ x: x(correction), text: writeSteps(correction) }))),
  };
}

/** Those that do not touch the one before. */
function roomy(marks: BracketPlot['marks']): BracketPlot['marks'] {
  const shown: BracketPlot['marks'][number][] = [];
  for (const mark of marks) if (mark.x - (shown.at(-1)?.x ?? -Infinity) >= MARK) shown.push(mark);
  return shown;
}

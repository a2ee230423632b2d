// Contract of the charts of pictures: everything drawn lies within its chart, and stands where its figures say.
import { describe, expect, test } from 'vitest';
import { bracketPlotOf } from '../../src/panel/photographs/bracketPlot.ts';
import { bracketOrder } from '../../src/photographs/bracket.ts';
import { bracketParts } from '../../src/photographs/series/bracketParts.ts';
import { readBracket } from '../../src/photographs/series/bracketSeries.ts';
import { steps } from '../../src/units.ts';
import { seriesPicture } from '../photographs/series/seriesPictures.ts';

const ORDER = bracketOrder([-8, -4, 0, 4, 8].map(steps), 2);

function plotted(centre: number, width: number, missed: number | null = null) {
  const errorAt = (correction: number, at: number): number => (at === missed ? 300 : 6 * (correction - centre) + (at % 2 === 0 ? 0.5 : -0.5));
  const pictures = ORDER.map((correction, at) => seriesPicture(at, { error: errorAt(correction, at) }));
  const series = readBracket(
    pictures,
    bracketParts(
      pictures.map(({ id }) => id),
      ORDER,
      new Map(),
    ),
    null,
  );
  if (!series?.measured.ok) throw new Error('These shots have a centre.');
  return bracketPlotOf(series, series.measured.value, width);
}

describe('the chart of a bracket', () => {
  test('shows the centre between the corrections it lies between, and focus behind the target above', () => {
    const { points, centre, target, marks } = plotted(2, 300);
    const [zero, four] = ['0', '+4'].map((name) => marks.find(({ text }) => text === name)?.x ?? NaN);
    expect(centre.x).toBeGreaterThan(zero ?? NaN);
    expect(centre.x).toBeLessThan(four ?? NaN);
    expect(centre.from).toBeLessThan(centre.x);
    const last = points[ORDER.indexOf(steps(8))];
    expect(last?.y).toBeLessThan(target);
  });

  test.each([
    [216, 2],
    [140, -7.5],
    [480, 19],
    [300, -60],
  ])('of %d pixels keeps everything in it, with the centre at %d', (width, centre) => {
    const plot = plotted(centre, width);
    const numbers = [plot.line, plot.band].flatMap((path) => path.match(/[\d.-]+ [\d.-]+/g) ?? []).map((pair) => pair.split(' ').map(Number));
    for (const [x = NaN, y = NaN] of [...numbers, ...plot.points.map((point) => [point.x, point.y])]) {
      expect(x >= 0 && x <= width && y >= 0 && y <= plot.height).toBe(true);
    }
    for (const x of [plot.centre.x, plot.centre.from, plot.centre.to]) expect(x >= 0 && x <= width).toBe(true);
    for (const [at, { x }] of plot.marks.entries()) expect(x - (plot.marks[at - 1]?.x ?? -Infinity)).toBeGreaterThanOrEqual(30);
    expect(plot.marks.length).toBeGreaterThan(1);
  });

  test('tells a shot that hardly counts apart', () => {
    expect(plotted(0, 300, 3).points.map(({ apart }) => apart)).toEqual(ORDER.map((_, at) => at === 3));
  });
});

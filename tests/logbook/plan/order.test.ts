import { describe, expect, it } from 'vitest';
import { changeBetween, costBetween, secondsFor, type Stop } from '../../../src/logbook/plan/changes.ts';
import { orderOf } from '../../../src/logbook/plan/order.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { stopsFrom } from './stops.ts';

const ids = (stops: readonly Stop[]): string[] => stops.map(({ id }) => id).sort();
const costOf = (stops: readonly Stop[]): number => stops.slice(1).reduce((sum, stop, at) => sum + costBetween(stops[at]!, stop), 0);
const secondsOf = (stops: readonly Stop[]): number => stops.slice(1).reduce((sum, stop, at) => sum + secondsFor(changeBetween(stops[at]!, stop)), 0);
const movesOf = (stops: readonly Stop[]): number => stops.slice(1).filter((stop, at) => stop.distance !== stops[at]!.distance).length;

function leastOfAll(stops: readonly Stop[]): number {
  let best = Infinity;
  const visit = (last: Stop | null, left: readonly Stop[], cost: number): void => {
    if (left.length === 0) best = Math.min(best, cost);
    else
      for (const next of left)
        visit(
          next,
          left.filter((stop) => stop !== next),
          cost + (last ? costBetween(last, next) : 0),
        );
  };
  visit(null, stops, 0);
  return best;
}

/** The best of several long searches by chance (Kirkpatrick, Gelatt & Vecchi 1983): swaps and turns, ever colder. */
function longSearch(stops: readonly Stop[], seed: number): Stop[] {
  const random = seededRandom(seed);
  const costs = stops.map((from) => stops.map((to) => (costBetween(from, to) % 1_000_000) + 2000 * Number(from.distance !== to.distance)));
  const between = (from: number | undefined, to: number | undefined): number => (from === undefined || to === undefined ? 0 : costs[from]![to]!);
  const path = stops.map((_, at) => at);
  let [total, least] = [path.reduce((sum, stop, at) => sum + between(path[at - 1], stop), 0), Infinity];
  let best = [...path];
  for (let heat = 400; heat > 1; heat *= 0.99997) {
    const [one, other] = [Math.floor(random() * path.length), Math.floor(random() * path.length)];
    const [from, to] = [Math.min(one, other), Math.max(one, other)];
    const change =
      between(path[from - 1], path[to]) + between(path[from], path[to + 1]) - between(path[from - 1], path[from]) - between(path[to], path[to + 1]);
    if (change > 0 && random() >= Math.exp(-change / heat)) continue;
    for (let [low, high] = [from, to]; low < high; low++, high--) [path[low], path[high]] = [path[high]!, path[low]!];
    total += change;
    if (total < least) [least, best] = [total, [...path]];
  }
  return best.map((at) => stops[at]!);
}

describe('the order of a plan', () => {
  it.each([2, 3, 4, 5, 6, 7, 8])('of %i situations is as short as the shortest of all orders', (count) => {
    for (const seed of count < 8 ? [1, 2, 3, 4, 5] : [1, 2]) {
      const stops = stopsFrom(seed * 100 + count, count);
      const ordered = orderOf(stops);
      expect(ids(ordered)).toEqual(ids(stops));
      expect(costOf(ordered)).toBe(leastOfAll(stops));
    }
  });

  it.each([11, 12, 13])('of 40 situations moves the tripod no more than it must, and swaps within 5 % of the best a long search finds (seed %i)', (seed) => {
    const stops = stopsFrom(seed, 40);
    const ordered = orderOf(stops);
    const searched = [1, 2, 3].map((run) => longSearch(stops, seed * 10 + run));
    const least = new Set(stops.map(({ distance }) => distance)).size - 1;
    const best = Math.min(...searched.filter((path) => movesOf(path) === least).map(secondsOf));
    expect(ids(ordered)).toEqual(ids(stops));
    expect(movesOf(ordered)).toBe(least);
    expect(best).toBeLessThan(Infinity);
    expect(secondsOf(ordered)).toBeLessThanOrEqual(1.05 * best);
  });

  it('is the same whenever the same situations are planned', () => {
    const stops = stopsFrom(7, 30);
    expect(orderOf(stops)).toEqual(orderOf(stops));
  });
});

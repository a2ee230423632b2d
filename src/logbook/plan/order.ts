// The order of a plan. Up to eight stops every order is weighed (Held & Karp 1962, by subsets); beyond that, from every
// stop the nearest next one, bettered by turning stretches round and by moving short stretches until nothing helps.
import { costBetween, type Stop } from './changes.ts';

const EXACT = 8;

export function orderOf(stops: readonly Stop[]): Stop[] {
  if (stops.length < 3) return [...stops];
  const costs = stops.map((from) => stops.map((to) => costBetween(from, to)));
  const path = stops.length <= EXACT ? leastBySubsets(costs) : leastFromEveryStart(costs);
  return path.flatMap((index) => stops[index] ?? []);
}

type Costs = readonly (readonly number[])[];
type Path = readonly number[];

const cost = (costs: Costs, from: number | undefined, to: number | undefined): number =>
  from === undefined || to === undefined ? 0 : (costs[from]?.[to] ?? 0);

const lengthOf = (costs: Costs, path: Path): number => path.reduce((sum, stop, at) => sum + cost(costs, path[at - 1], stop), 0);

function leastBySubsets(costs: Costs): Path {
  const all = costs.map((_, stop) => stop);
  let ending = new Map<string, { readonly path: Path; readonly cost: number }>();
  for (const stop of all) ending.set(`${1 << stop} ${stop}`, { path: [stop], cost: 0 });
  for (let size = 1; size < all.length; size++) {
    const longer: typeof ending = new Map();
    for (const known of ending.values()) {
      for (const next of all.filter((stop) => !known.path.includes(stop))) {
        const path = [...known.path, next];
        const key = `${path.reduce((set, stop) => set | (1 << stop), 0)} ${next}`;
        const total = known.cost + cost(costs, known.path.at(-1), next);
        if (total < (longer.get(key)?.cost ?? Infinity)) longer.set(key, { path, cost: total });
      }
    }
    ending = longer;
  }
  return least(
    [...ending.values()].map(({ path }) => path),
    costs,
  );
}

const leastFromEveryStart = (costs: Costs): Path =>
  least(
    costs.map((_, start) => bettered(costs, nearestFirst(costs, start))),
    costs,
  );

function least(paths: readonly Path[], costs: Costs): Path {
  return paths.reduce((best, path) => (lengthOf(costs, path) < lengthOf(costs, best) ? path : best));
}

function nearestFirst(costs: Costs, start: number): Path {
  const path = [start];
  const left = new Set(costs.keys());
  left.delete(start);
  while (left.size > 0) {
    const from = path.at(-1);
    const next = [...left].reduce((best, stop) => (cost(costs, from, stop) < cost(costs, from, best) ? stop : best));
    path.push(next);
    left.delete(next);
  }
  return path;
}

/** The longest stretch that is moved elsewhere. */
const STRETCH = 6;

/** Turns and moves stretches as long as one of them shortens the path. */
function bettered(costs: Costs, start: Path): Path {
  let path = start;
  for (let next = shorter(costs, path); next; next = shorter(costs, path)) path = next;
  return path;
}

function shorter(costs: Costs, path: Path): Path | null {
  for (let from = 0; from < path.length; from++) {
    for (let to = from; to < path.length; to++) {
      if (turnSaves(costs, path, from, to)) {
        return [...path.slice(0, from), ...path.slice(from, to + 1).toReversed(), ...path.slice(to + 1)];
      }
      const moved = to - from < STRETCH ? movedStretch(costs, path, from, to) : null;
      if (moved) return moved;
    }
  }
  return null;
}

/** Costs are the same both ways, so only the two joints change. */
function turnSaves(costs: Costs, path: Path, from: number, to: number): boolean {
  const [before, first, last, after] = [path[from - 1], path[from], path[to], path[to + 1]];
  return cost(costs, before, last) + cost(costs, first, after) < cost(costs, before, first) + cost(costs, last, after);
}

function movedStretch(costs: Costs, path: Path, from: number, to: number): Path | null {
  const [before, first, last, after] = [path[from - 1], path[from], path[to], path[to + 1]];
  const saved = cost(costs, before, first) + cost(costs, last, after) - cost(costs, before, after);
  if (saved <= 0) return null;
  const rest = [...path.slice(0, from), ...path.slice(to + 1)];
  for (let at = 0; at <= rest.length; at++) {
    const [left, right] = [rest[at - 1], rest[at]];
    const opened = cost(costs, left, right);
    const asIs = cost(costs, left, first) + cost(costs, last, right) - opened;
    const turned = cost(costs, left, last) + cost(costs, first, right) - opened;
    if (Math.min(asIs, turned) >= saved) continue;
    const stretch = path.slice(from, to + 1);
    return [...rest.slice(0, at), ...(asIs <= turned ? stretch : stretch.toReversed()), ...rest.slice(at)];
  }
  return null;
}

// What is wrong with the walls, each fault as one line that names the file and the line of the import.
import type { Import } from './imports.ts';

interface Room {
  readonly holds: readonly string[];
  readonly knows: readonly string[];
}
/** Lowest first. */
export type Rooms = Readonly<Record<string, Room>>;

/** The room of a file; null where no room holds it. */
function roomOf(rooms: Rooms, file: string): string | null {
  let best: { name: string; length: number } | null = null;
  for (const [name, { holds }] of Object.entries(rooms)) {
    for (const held of holds) {
      const fits = file === held || file.startsWith(`${held}/`);
      if (fits && held.length > (best?.length ?? 0)) best = { name, length: held.length };
    }
  }
  return best?.name ?? null;
}

/** Arrows that the table does not allow, and files that stand in no room. */
export function wrongArrows(rooms: Rooms, files: readonly string[], imports: readonly Import[]): string[] {
  const homeless = files.filter((file) => roomOf(rooms, file) === null).map((file) => `${file}: no room holds it`);
  const wrong = imports.flatMap(({ file, line, of }) => {
    const [from, to] = [roomOf(rooms, file), roomOf(rooms, of)];
    if (from === null || from === to || (to !== null && rooms[from]?.knows.includes(to))) return [];
    return [`${file}:${line}: ${from} may not know ${to ?? 'what no room holds'} (${of})`];
  });
  return [...homeless, ...wrong];
}

/** Arrows of the table that nothing uses any more. */
export function idleArrows(rooms: Rooms, imports: readonly Import[]): string[] {
  const used = new Set(imports.map(({ file, of }) => `${roomOf(rooms, file)} \u2192 ${roomOf(rooms, of)}`));
  const allowed = Object.entries(rooms).flatMap(([name, { knows }]) => knows.map((known) => `${name} \u2192 ${known}`));
  return allowed.filter((arrow) => !used.has(arrow)).map((arrow) => `${arrow}: nothing uses it; strike it from the table`);
}

/** A table that is in order has no circle: whatever a room knows stands above it. */
export function roomCircles(rooms: Rooms): string[] {
  const names = Object.keys(rooms);
  return names.flatMap((name, at) =>
    (rooms[name]?.knows ?? []).filter((known) => names.indexOf(known) >= at).map((known) => `${name} \u2192 ${known}: it must stand above`),
  );
}

/** Every group of files that know each other, by its shortest circle: one line an import. */
export function fileCircles(imports: readonly Import[]): string[] {
  const from = new Map<string, Import[]>();
  for (const step of imports) from.set(step.file, [...(from.get(step.file) ?? []), step]);
  const seen = new Set<string>();
  return [...from.keys()].flatMap((file) => {
    if (seen.has(file)) return [];
    const circle = shortestCircle(from, file);
    for (const step of circle) seen.add(step.file);
    return circle.length === 0 ? [] : [circle.map((step) => `${step.file}:${step.line} \u2192 ${step.of}`).join('\n  ')];
  });
}

/** The fewest imports that lead from a file back to it, breadth first; none where it lies in no circle. */
function shortestCircle(from: ReadonlyMap<string, readonly Import[]>, file: string): Import[] {
  const by = new Map<string, Import>();
  const open = [file];
  for (let at = open.shift(); at !== undefined; at = open.shift()) {
    for (const step of from.get(at) ?? []) {
      if (by.has(step.of)) continue;
      by.set(step.of, step);
      if (step.of === file) return wayTo(by, file);
      open.push(step.of);
    }
  }
  return [];
}

function wayTo(by: ReadonlyMap<string, Import>, file: string): Import[] {
  const way: Import[] = [];
  for (let step = by.get(file); step; step = step.file === file ? undefined : by.get(step.file)) way.unshift(step);
  return way;
}

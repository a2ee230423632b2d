// The rooms as a drawing (Mermaid): an arrow from each room to those it knows, but for those that it reaches by way of another.
import type { Rooms } from './faults.ts';

export function architectureOf(rooms: Rooms): string {
  const names = Object.keys(rooms);
  const id = (name: string): string => name.replaceAll(/\W+/g, '_');
  const arrows = names.flatMap((from) => nearest(rooms, from).map((to) => `  ${id(from)} --> ${id(to)}`));
  return ['```mermaid', 'flowchart TD', ...names.map((name) => `  ${id(name)}["${name}"]`), ...arrows, '```'].join('\n');
}

/** What a room knows that nothing else it knows leads to. */
function nearest(rooms: Rooms, from: string): string[] {
  const known = rooms[from]?.knows ?? [];
  return known.filter((to) => !known.some((by) => by !== to && reaches(rooms, by, to)));
}

const reaches = (rooms: Rooms, from: string, to: string): boolean => (rooms[from]?.knows ?? []).some((next) => next === to || reaches(rooms, next, to));

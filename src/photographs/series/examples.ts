// Which two pictures of a series are looked at again later: the first one focused in live view, and the shot that shows best what the series found.
import type { BracketPart } from './bracketParts.ts';
import type { CheckPart } from './checkParts.ts';
import { errorOf, type SeriesPicture } from './seriesPicture.ts';

/** Ids of pictures; null where there is none. */
export interface Examples {
  readonly reference: string | null;
  readonly shot: string | null;
}

/** `error`: where focus fell in the shot wanted, in millimetres at the target; of those with autofocus the nearest to it is taken. */
export function examplesOf(pictures: readonly SeriesPicture[], parts: ReadonlyMap<string, CheckPart | BracketPart>, error: number): Examples {
  const told = pictures.flatMap(({ id, reading: { focus } }) =>
    focus.ok ? [{ id, part: parts.get(id), off: Math.abs(errorOf(focus.value).value - error) }] : [],
  );
  const shots = told.filter(({ part }) => part !== undefined && part !== 'live view' && part !== 'left out');
  return {
    reference: told.find(({ part }) => part === 'live view')?.id ?? null,
    shot: shots.toSorted((one, other) => one.off - other.off)[0]?.id ?? null,
  };
}

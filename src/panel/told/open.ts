// What is still to be told of a sweep: a piece that only stands in counts as not told.
import type { Kit } from '../../kit/kit.ts';
import { partsOf } from '../../kit/told.ts';
import type { Subject, Unnamed } from '../../sweep/plan.ts';

export function toldOf(subject: Subject | Unnamed, kit: Kit): Unnamed {
  const parts = partsOf(subject, kit);
  const real = (all: readonly { readonly id: string; readonly standIn?: true }[], piece: Unnamed['body']) =>
    all.some(({ id, standIn }) => id === piece?.id && standIn) ? null : piece;
  return { ...parts, body: real(kit.bodies, parts.body), lens: real(kit.lenses, parts.lens) };
}

/** Something is still open. */
export const isOpen = ({ body, lens, focalLength }: Unnamed): boolean => body === null || lens === null || focalLength === null;

// The other situations of a lens: what a person looks at beside one of them, from the shortest focal length to the longest, near before far.
import type { Shelved } from './shelf.ts';

/** Without those put away. A lens that the kit does not know is told by its name. */
export function othersOfLens(shelf: readonly Shelved[], one: Shelved): Shelved[] {
  return shelf
    .filter((other) => other.subject.situation !== one.subject.situation && !other.retired && isSameLens(other, one))
    .sort(({ subject: a }, { subject: b }) => a.focalLength - b.focalLength || a.distance - b.distance);
}

const isSameLens = (a: Shelved, b: Shelved): boolean =>
  a.situation && b.situation ? a.situation.lens === b.situation.lens : a.subject.lens === b.subject.lens;

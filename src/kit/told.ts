// Whose sweep it is as far as was told, part by part, and what follows from the parts: the focal length that a lens brings,
// and the distance that follows the focal length.
import { isNamed, NOTHING_TOLD } from '../sweep/named.ts';
import type { Piece, Subject, Unnamed } from '../sweep/plan.ts';
import { millimetres, type Millimetres } from '../units.ts';
import { focalInName } from './focalInName.ts';
import { usualDistance, type Kit, type Lens } from './kit.ts';

export const pieceOf = ({ id, name }: Piece): Piece => ({ id, name });

/** The parts of a sweep, named or not. A distance of fifty focal lengths counts as one that follows, lengths that only stand in as not told. */
export function partsOf(subject: Subject | Unnamed, kit: Kit): Unnamed {
  if (!isNamed(subject)) return subject;
  const situation = kit.situations.find(({ id }) => id === subject.situation);
  if (!situation) return ofNames(subject);
  const piece = (all: readonly Piece[], id: string | null): Piece | null => {
    const one = all.find((each) => each.id === id);
    return one ? pieceOf(one) : null;
  };
  const parts = {
    situation: null,
    body: piece(kit.bodies, situation.body),
    lens: piece(kit.lenses, situation.lens),
    converter: piece(kit.converters, situation.converter),
    focalLength: situation.focalLength,
    distance: null,
  };
  if (situation.standIn) return { ...parts, focalLength: null };
  return { ...parts, distance: distanceOf(parts, kit) === situation.distance ? null : situation.distance };
}

/** What the kit does not know has its name and no id. */
const ofNames = ({ body, lens, focalLength, distance }: Subject): Unnamed => ({
  ...NOTHING_TOLD,
  body: { id: '', name: body },
  lens: { id: '', name: lens },
  focalLength,
  distance,
});

/** The distance that was told, or fifty focal lengths, those of lens and converter together; null where neither is known. */
export function distanceOf({ focalLength, distance, converter }: Unnamed, { converters }: Pick<Kit, 'converters'>): Millimetres | null {
  if (distance !== null || focalLength === null) return distance;
  const factor = converters.find(({ id }) => id === converter?.id)?.factor ?? 1;
  return millimetres(Math.round(usualDistance(millimetres(focalLength * factor))));
}

/** The focal lengths of a lens: those the kit knows, or those it is called by. */
export const focalOf = (lens: Pick<Lens, 'name' | 'focal'>): Lens['focal'] => lens.focal ?? focalInName(lens.name);

/** The only focal length of a lens; null where it zooms or where none is known. */
export function onlyFocal(lens: Pick<Lens, 'name' | 'focal'>): Millimetres | null {
  const focal = focalOf(lens);
  return focal && focal.from === focal.to ? focal.from : null;
}

/** Two names for one thing: capitals, blanks and the width of figures do not part them, as a name that was said comes without. */
export const isSameName = (one: string, other: string): boolean => folded(one) === folded(other);
const folded = (name: string): string => name.normalize('NFKC').replace(/\s+/g, '').toLowerCase();

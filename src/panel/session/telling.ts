// Puts what was told of a sweep into the kit, part by part: a body and a lens by their names, the lengths as they fit. A name
// the kit knows means that piece; a new name goes to the piece that only stood in, or else to a new one.
import * as v from 'valibot';
import { Distance, FocalLength, subjectIn, type Body, type Kit, type Lens } from '../../kit/kit.ts';
import { distanceOf, isSameName, onlyFocal, pieceOf } from '../../kit/told.ts';
import { focalInName } from '../../kit/focalInName.ts';
import type { Piece, Plan, Subject, Unnamed } from '../../sweep/plan.ts';
import { words } from '../../words/catalogue.ts';
import { faultsIn } from './faults.ts';
import type { KitForms } from './kitForms.ts';
import { DONE, failed, got } from '../../result.ts';
import type { Called, Described, Description, Saved } from './session.ts';

/** What was told so far, and what of it the kit could not take. */
export interface PartsTaken {
  readonly parts: Unnamed;
  readonly described: Described;
}

export type KitDesk = KitForms & { readonly kit: () => Kit };

const faulty = (of: keyof Description | null, sentence: string): Described => failed({ of, sentence });

const sentenceFor = (issues: readonly v.BaseIssue<unknown>[]): string => faultsIn(issues)[0]?.sentence ?? '';

/** Takes the parts one after another and stops at the first that does not fit; what was taken before it stays. */
export function takeIn(before: Unnamed, told: Description, scale: Pick<Plan, 'scale' | 'arrows'>, desk: KitDesk): PartsTaken {
  let parts = before;
  const refused = (of: keyof Description, saved: Saved): PartsTaken => ({
    parts,
    described: faulty(of, saved.ok ? '' : (saved.fault[0]?.sentence ?? '')),
  });
  if (told.body) {
    const body = bodyCalled(told.body, before.body, scale, desk);
    if (!body.ok) return refused('body', body);
    parts = { ...parts, body: named(desk.kit().bodies, body.value) };
  }
  if (told.lens) {
    const saved = lensCalled(told.lens, before.lens, desk);
    if (!saved.ok) return refused('lens', saved);
    const lens = desk.kit().lenses.find(({ id }) => id === saved.value);
    const another = saved.value !== before.lens?.id;
    const focalLength = (lens && onlyFocal(lens)) ?? (another && before.lens ? null : before.focalLength);
    const straight = another && before.lens ? { converter: null, distance: null } : {};
    parts = { ...parts, ...straight, lens: named(desk.kit().lenses, saved.value), focalLength };
  }
  if (told.converter !== undefined) {
    parts = { ...parts, converter: told.converter === null ? null : named(desk.kit().converters, told.converter) };
  }
  if (told.focalLength !== undefined) {
    const length = v.safeParse(FocalLength, told.focalLength);
    if (!length.success) return { parts, described: faulty('focalLength', sentenceFor(length.issues)) };
    parts = { ...parts, focalLength: length.output };
  }
  if (told.distance !== undefined) {
    const distance = v.safeParse(v.nullable(Distance), told.distance);
    if (!distance.success) return { parts, described: faulty('distance', sentenceFor(distance.issues)) };
    parts = { ...parts, distance: distance.output };
  }
  return { parts, described: DONE };
}

/** The subject of parts that leave nothing open, with its situation in the kit; null where something is still to be told. */
export function subjectOfParts(parts: Unnamed, desk: KitDesk): Subject | null {
  const { body, lens, converter, focalLength } = parts;
  const distance = distanceOf(parts, desk.kit());
  if (!body || !lens || focalLength === null || distance === null) return null;
  const saved = desk.saveSituation({ body: body.id, lens: lens.id, converter: converter?.id ?? null, focalLength, distance });
  const situation = saved.ok && desk.kit().situations.find(({ id }) => id === saved.value);
  return situation ? subjectIn(desk.kit(), situation) : null;
}

function bodyCalled(called: Called, before: Piece | null, { scale, arrows }: Pick<Plan, 'scale' | 'arrows'>, desk: KitDesk): Saved {
  const { bodies } = desk.kit();
  const known = find(bodies, called);
  if (known || 'id' in called) return known ? got(known.id) : gone();
  const standIn = bodies.find(({ id, standIn }) => id === before?.id && standIn);
  return standIn ? desk.putKit('bodies', { ...settled(standIn), name: called.name }, standIn.changed) : desk.saveBody({ name: called.name, scale, arrows });
}

function lensCalled(called: Called, before: Piece | null, desk: KitDesk): Saved {
  const { lenses } = desk.kit();
  const known = find(lenses, called);
  if (known || 'id' in called) return known ? got(known.id) : gone();
  const focal = focalInName(called.name);
  const standIn = lenses.find(({ id, standIn }) => id === before?.id && standIn);
  if (standIn) return desk.putKit('lenses', { ...settled(standIn), name: called.name, focal }, standIn.changed);
  const saved = desk.saveLens({ name: called.name });
  const fresh = saved.ok && desk.kit().lenses.find(({ id }) => id === saved.value);
  return fresh && focal ? desk.putKit('lenses', { ...fresh, focal }, fresh.changed) : saved;
}

const gone = (): Saved => failed([{ field: null, sentence: words('session').untold.kitGone }]);

/** One that is put away is meant only where it is pointed at. */
const find = <Item extends Body | Lens>(all: readonly Item[], called: Called): Item | undefined =>
  all.find((one) => ('id' in called ? one.id === called.id : one.retired === null && !one.standIn && isSameName(one.name, called.name)));

function named(all: readonly Piece[], id: string): Piece | null {
  const one = all.find((each) => each.id === id);
  return one ? pieceOf(one) : null;
}

function settled<Item extends Body | Lens>(item: Item): Omit<Item, 'standIn'> {
  const { standIn: _, ...rest } = item;
  return rest;
}

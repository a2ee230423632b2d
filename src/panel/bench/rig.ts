// Whose rig stands at the bench. What was measured on one rig is not true of the next: another lens, another end or
// another distance begins with empty readings, while what belongs to the room, the body and the person's habits stays.
import type { Millimetres } from '../../units.ts';
import { distanceTyped } from '../words/distanceTyped.ts';
import type { KitTraits, Picks } from './untyped.ts';
import type { Quantity } from './values.ts';
import type { BenchSubject } from './subject.ts';
import type { BenchEntries } from './entry.ts';
import type { BenchStore, FromKit } from './typed.ts';

const OF_ROOM: readonly Quantity[] = ['area', 'ownConfusion', 'worth', 'fine', 'plenty'];
const OF_BODY: readonly Quantity[] = ['pixels'];
const PICKS_OF_ROOM: readonly (keyof Picks)[] = ['unit', 'from', 'confusion', 'lighting', 'mains', 'squareBy', 'paper', 'version'];
const PICKS_OF_BODY: readonly (keyof Picks)[] = ['sensor'];
const TRAITS_OF_BODY: readonly (keyof KitTraits)[] = ['bodyStabiliser', 'liveView', 'rearButton', 'manualAtBody'];

/** Sets the bench up for a subject; `measured` is the distance typed at the bench, null where none was. */
export function standFor(bench: BenchStore, subject: BenchSubject, measured: Millimetres | null, known: FromKit): void {
  const { rig, entries, picks, traits, noted } = bench.peek();
  const sameBody = rig === undefined || rig.body === subject.body;
  bench.value =
    sameBody && (rig === undefined || stands(rig, subject, measured))
      ? { rig: subject, known, entries, picks, traits, noted }
      : {
          rig: subject,
          known,
          entries: only<BenchEntries>(entries, sameBody ? [...OF_ROOM, ...OF_BODY] : OF_ROOM),
          picks: only<Picks>(picks, sameBody ? [...PICKS_OF_ROOM, ...PICKS_OF_BODY] : PICKS_OF_ROOM),
          traits: only<KitTraits>(traits, sameBody ? TRAITS_OF_BODY : []),
          noted,
        };
}

/** The same lens, where it stood or where the bench measured that it stands. */
function stands(rig: BenchSubject, subject: BenchSubject, measured: Millimetres | null): boolean {
  if (rig.lens !== subject.lens || rig.focalLength !== subject.focalLength) return false;
  return rig.distance === subject.distance || (measured !== null && distanceTyped(measured, 'm') === distanceTyped(subject.distance, 'm'));
}

const only = <Of extends object>(all: Partial<Of>, names: readonly (keyof Of)[]): Partial<Of> =>
  Object.fromEntries(names.filter((name) => name in all).map((name) => [name, all[name]])) as Partial<Of>;

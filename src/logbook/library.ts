// Everything the logbook owns, as it is stored: the kit, the finished sweeps, what was put in by hand, what was
// entered in the cameras, what happened to the kit, and what photographs showed. Lists only grow; an item is replaced
// by a newer state of itself. What photographs showed may be erased.
import * as v from 'valibot';
import type { KitList } from '../kit/change.ts';
import { EMPTY_KIT, Kit } from '../kit/kit.ts';
import { HandRecord } from './byHand.ts';
import { Entry } from './entry.ts';
import { KitNote } from './kitNote.ts';
import { ProofRecord } from './proofRecord.ts';
import { LogRecord } from './record.ts';
import { VERSION } from './stored.ts';

export const Library = v.object({
  version: v.literal(VERSION),
  kit: Kit,
  records: v.array(LogRecord),
  byHand: v.array(HandRecord),
  entries: v.array(Entry),
  notes: v.array(KitNote),
  proofs: v.array(ProofRecord),
});
export type Library = v.InferOutput<typeof Library>;

/** Kit may be edited, and its latest state counts. Records are for ever; only the conditions told with them may be told again. */
export type RecordList = Exclude<keyof Library, 'version' | 'kit'>;
/** A list of the logbook, by its name in the file. */
export type ListName = KitList | RecordList;

export const EMPTY_LIBRARY: Library = {
  version: VERSION,
  kit: EMPTY_KIT,
  records: [],
  byHand: [],
  entries: [],
  notes: [],
  proofs: [],
};

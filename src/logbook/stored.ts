// Everything that is kept on disk, as it lies there: one key for the settings, the kit and the live sweep, and one for
// each record. Whatever does not fit its schema is taken out whole and named, so that it can be set aside and nothing is
// dropped.
import * as v from 'valibot';
import { EMPTY_KIT, Kit } from '../kit/kit.ts';
import { Settings } from '../settings.ts';
import { USUAL_SETTINGS } from '../usualSettings.ts';
import { Journal } from '../sweep/event.ts';
import { Moment } from '../storedUnits.ts';
import { HandRecord } from './byHand.ts';
import { Entry } from './entry.ts';
import { KEY, PREFIX } from './keys.ts';
import { KitNote } from './kitNote.ts';
import { newestFirst } from './newestFirst.ts';
import { JobPlan } from './plan/jobPlan.ts';
import { ProofRecord } from './proofRecord.ts';
import { LogRecord } from './record.ts';
import { atOnce, type Stepwise } from '../stepwise.ts';

/** All keys and values of the store, unchecked. */
export type Stored = Readonly<Record<string, unknown>>;

/** The version of the stored form; `libraryVersions.ts` and `migrations.ts` lead to it. */
export const VERSION = 3;

/** Nothing of the person's own is in it. */
export const isEmpty = (stored: Stored): boolean => Object.keys(stored).every((key) => key === KEY.version || key === KEY.settings);

export interface Contents {
  readonly settings: Settings;
  readonly kit: Kit;
  /** Newest first. */
  readonly records: readonly LogRecord[];
  readonly byHand: readonly HandRecord[];
  readonly entries: readonly Entry[];
  readonly notes: readonly KitNote[];
  readonly proofs: readonly ProofRecord[];
  /** The journal of the sweep under way. */
  readonly live: Journal | null;
  /** What is to be measured in the job under way. */
  readonly plan: JobPlan | null;
  readonly backup: Moment | null;
}

/** A value that does not fit its schema, and where in it; null for the whole. */
export interface Spoilt {
  readonly key: string;
  readonly value: unknown;
  readonly field: string | null;
}

/** What the store holds, and what in it is spoilt. */
export interface CheckedStore {
  readonly contents: Contents;
  readonly spoilt: readonly Spoilt[];
}

export const contentsOf = (stored: Stored): CheckedStore => atOnce(checkingContents(stored));

/** The same, one key at a step. */
export function* checkingContents(stored: Stored): Stepwise<CheckedStore> {
  const spoilt: Spoilt[] = [];
  const keys = Object.keys(stored);
  let done = 0;
  return {
    contents: {
      settings: checked(KEY.settings, Settings) ?? USUAL_SETTINGS,
      kit: checked(KEY.kit, Kit) ?? EMPTY_KIT,
      records: newestFirst(yield* all(PREFIX.record, LogRecord)),
      byHand: yield* all(PREFIX.byHand, HandRecord),
      entries: yield* all(PREFIX.entry, Entry),
      notes: yield* all(PREFIX.note, KitNote),
      proofs: yield* all(PREFIX.proof, ProofRecord),
      live: checked(KEY.live, Journal),
      plan: checked(KEY.plan, JobPlan),
      backup: checked(KEY.backup, Moment),
    },
    spoilt,
  };

  function* all<Schema extends v.GenericSchema>(prefix: string, schema: Schema): Stepwise<v.InferOutput<Schema>[]> {
    const items: v.InferOutput<Schema>[] = [];
    for (const key of keys) {
      if (!key.startsWith(prefix)) continue;
      const item = checked(key, schema);
      if (item !== null) items.push(item);
      yield { done: ++done, of: keys.length };
    }
    return items;
  }

  function checked<Schema extends v.GenericSchema>(key: string, schema: Schema): v.InferOutput<Schema> | null {
    const value = stored[key];
    if (value === undefined) return null;
    const result = v.safeParse(schema, value);
    if (result.success) return result.output;
    spoilt.push({ key, value, field: v.getDotPath(result.issues[0]) });
    return null;
  }
}

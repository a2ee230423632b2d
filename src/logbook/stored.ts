// Everything that is kept on disk, as it lies there: one key for the settings, the kit and the live sweep, and one for
// each record. Whatever does not fit its schema is taken out whole and named, so that it can be set aside and nothing is
// dropped.
import * as v from 'valibot';
import { EMPTY_KIT, Kit } from '../kit/kit.ts';
import { Settings, USUAL_SETTINGS } from '../settings.ts';
import { Journal } from '../sweep/event.ts';
import { Moment } from '../units.ts';
import { HandRecord } from './byHand.ts';
import { Entry } from './entry.ts';
import { KitNote } from './kitNote.ts';
import { LogRecord } from './record.ts';

/** All keys and values of the store, unchecked. */
export type Stored = Readonly<Record<string, unknown>>;

/** `backup`: when the newest backup file was written. `replaced`: when all of the logbook was last put in place of another. */
export const KEY = { version: 'version', settings: 'settings', kit: 'kit', live: 'live', backup: 'backup', replaced: 'replaced' } as const;
/** The version of the stored form; `libraryVersions.ts` and `migrations.ts` lead to it. */
export const VERSION = 2;

const RECORD = 'record:';
const BY_HAND = 'by-hand:';
const ENTRY = 'entry:';
const NOTE = 'note:';
const SET_ASIDE = 'set-aside:';

export const recordKey = (id: string): string => `${RECORD}${id}`;
export const byHandKey = (id: string): string => `${BY_HAND}${id}`;
export const entryKey = (id: string): string => `${ENTRY}${id}`;
export const noteKey = (id: string): string => `${NOTE}${id}`;
export const setAsideKey = (key: string, at: Moment): string => `${SET_ASIDE}${key}:${at}`;

/** Nothing of the person's own is in it. */
export const isEmpty = (stored: Stored): boolean =>
  Object.keys(stored).every((key) => key === KEY.version || key === KEY.settings);

export interface Contents {
  readonly settings: Settings;
  readonly kit: Kit;
  /** Newest first. */
  readonly records: readonly LogRecord[];
  readonly byHand: readonly HandRecord[];
  readonly entries: readonly Entry[];
  readonly notes: readonly KitNote[];
  /** The journal of the sweep under way. */
  readonly live: Journal | null;
  readonly backup: Moment | null;
}

/** A value that does not fit its schema, and what in it does not. */
export interface Spoilt {
  readonly key: string;
  readonly value: unknown;
  readonly fault: string;
}

/** What the store holds, and what in it is spoilt. */
export function contentsOf(stored: Stored): { contents: Contents; spoilt: readonly Spoilt[] } {
  const spoilt: Spoilt[] = [];
  return {
    contents: {
      settings: checked(KEY.settings, Settings) ?? USUAL_SETTINGS,
      kit: checked(KEY.kit, Kit) ?? EMPTY_KIT,
      records: newestFirst(all(RECORD, LogRecord)),
      byHand: all(BY_HAND, HandRecord),
      entries: all(ENTRY, Entry),
      notes: all(NOTE, KitNote),
      live: checked(KEY.live, Journal),
      backup: checked(KEY.backup, Moment),
    },
    spoilt,
  };

  function all<Schema extends v.GenericSchema>(prefix: string, schema: Schema): v.InferOutput<Schema>[] {
    const keys = Object.keys(stored).filter((key) => key.startsWith(prefix));
    return keys.map((key) => checked(key, schema)).filter((item) => item !== null);
  }

  function checked<Schema extends v.GenericSchema>(key: string, schema: Schema): v.InferOutput<Schema> | null {
    const value = stored[key];
    if (value === undefined) return null;
    const result = v.safeParse(schema, value);
    if (result.success) return result.output;
    spoilt.push({ key, value, fault: faultIn(result.issues[0]) });
    return null;
  }
}

export const newestFirst = (records: readonly LogRecord[]): LogRecord[] => [...records].sort((a, b) => b.finished - a.finished);

const faultIn = (issue: v.BaseIssue<unknown>): string => [v.getDotPath(issue), issue.message].filter(Boolean).join(': ');

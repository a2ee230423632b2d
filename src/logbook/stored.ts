// Everything that is kept on disk, as it lies there: one key for the settings, the kit and the live sweep, and one for
// each record. Whatever does not fit its schema is taken out whole and named, so that it can be set aside and nothing is
// dropped.
import * as v from 'valibot';
import { EMPTY_KIT, Kit } from '../kit/kit.ts';
import { Settings, USUAL_SETTINGS } from '../settings.ts';
import { Journal } from '../sweep/event.ts';
import type { Moment } from '../units.ts';
import { LogRecord } from './record.ts';

/** All keys and values of the store, unchecked. */
export type Stored = Readonly<Record<string, unknown>>;

export const KEY = { version: 'version', settings: 'settings', kit: 'kit', live: 'live' } as const;
const RECORD = 'record:';
const SET_ASIDE = 'set-aside:';

export const recordKey = (id: string): string => `${RECORD}${id}`;
export const isRecordKey = (key: string): boolean => key.startsWith(RECORD);
export const setAsideKey = (key: string, at: Moment): string => `${SET_ASIDE}${key}:${at}`;

/** Nothing of the person's own is in it. */
export const isEmpty = (stored: Stored): boolean =>
  Object.keys(stored).every((key) => key === KEY.version || key === KEY.settings);

export interface Contents {
  readonly settings: Settings;
  readonly kit: Kit;
  /** Newest first. */
  readonly records: readonly LogRecord[];
  /** The journal of the sweep under way. */
  readonly live: Journal | null;
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
  const records = Object.keys(stored).filter(isRecordKey);
  return {
    contents: {
      settings: checked(KEY.settings, Settings) ?? USUAL_SETTINGS,
      kit: checked(KEY.kit, Kit) ?? EMPTY_KIT,
      records: newestFirst(records.flatMap((key) => checked(key, LogRecord) ?? [])),
      live: checked(KEY.live, Journal),
    },
    spoilt,
  };

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

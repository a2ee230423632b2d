// Under which keys everything lies on disk: one for the settings, the kit and the live sweep, and one for each record.
import type { Moment } from '../units.ts';

/**
 * `backup`: when the newest backup file was written. `replaced`: when all of the logbook was last put in place of another.
 * `bringing`: only while a large logbook is written in parts: when the copy of what was here before was taken.
 */
export const KEY = {
  version: 'version',
  settings: 'settings',
  kit: 'kit',
  live: 'live',
  plan: 'plan',
  backup: 'backup',
  replaced: 'replaced',
  bringing: 'bringing',
} as const;

export const PREFIX = { record: 'record:', byHand: 'by-hand:', entry: 'entry:', note: 'note:', proof: 'proof:' } as const;
const SET_ASIDE = 'set-aside:';

export const recordKey = (id: string): string => `${PREFIX.record}${id}`;
export const byHandKey = (id: string): string => `${PREFIX.byHand}${id}`;
export const entryKey = (id: string): string => `${PREFIX.entry}${id}`;
export const noteKey = (id: string): string => `${PREFIX.note}${id}`;
export const proofKey = (id: string): string => `${PREFIX.proof}${id}`;
export const setAsideKey = (key: string, at: Moment): string => `${SET_ASIDE}${key}:${at}`;

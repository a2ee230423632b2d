// The layouts the store has had, in order. A migration is a pure function of everything stored; a copy is taken before
// one runs. What was written by a newer program is left untouched.
import { wholeKit } from '../kit/wholeKit.ts';
import { KEY } from './keys.ts';
import type { Stored } from './stored.ts';

export interface Migration {
  readonly to: number;
  readonly change: (stored: Stored) => Stored;
}

/**
 * Version 1 is the first layout: there is nothing older to change. Version 2 describes the kit whole. Version 3 keeps what photographs
 * showed under keys of their own: nothing older has any, and an older program is to leave them alone.
 */
export const MIGRATIONS: readonly Migration[] = [
  { to: 1, change: (stored) => stored },
  { to: 2, change: (stored) => (KEY.kit in stored ? { ...stored, [KEY.kit]: wholeKit(stored[KEY.kit]) } : stored) },
  { to: 3, change: (stored) => stored },
];

export type Migrated = { readonly is: 'current' } | { readonly is: 'changed'; readonly from: number; readonly stored: Stored } | { readonly is: 'too new' };

/** Brings what is stored to the newest layout; `version` zero stands for a store that has none yet. */
export function migrate(stored: Stored, migrations: readonly Migration[] = MIGRATIONS): Migrated {
  const newest = migrations.at(-1)?.to ?? 0;
  const from = versionOf(stored);
  if (from === newest) return { is: 'current' };
  if (from > newest) return { is: 'too new' };
  const due = migrations.filter(({ to }) => to > from);
  return { is: 'changed', from, stored: due.reduce((before, { to, change }) => ({ ...change(before), [KEY.version]: to }), stored) };
}

function versionOf(stored: Stored): number {
  const version = stored[KEY.version];
  return typeof version === 'number' ? version : 0;
}

// What the panel has acknowledged so far, across all starts of one profile: each fact must be there at every look.
import { migrate } from '../../../src/logbook/migrations.ts';
import { contentsOf } from '../../../src/logbook/stored.ts';
import type { Kept } from './kept.ts';

export interface Fact {
  /** Its name; a newer fact of this name takes its place. */
  readonly what: string;
  /** The logbook is what a copy that is brought back puts in its place; the rest lies beside it. */
  readonly of: 'logbook' | 'beside';
  readonly isIn: (kept: Kept) => boolean;
}

export interface Ledger {
  /** How many facts are held to be there now. */
  readonly standing: () => number;
  hold(fact: Fact): void;
  /** What is about to be undone by hand, or has been: no longer held. */
  drop(what: (name: string) => boolean): void;
  /** From now on these may stand in place of all facts of the logbook, at once and whole. */
  mayBecome(facts: readonly Fact[]): void;
  /** The panel has said that they do. */
  became(): void;
  /** The names of facts that should be there and are not. */
  lost(kept: Kept): readonly string[];
}

export function createLedger(): Ledger {
  const facts = new Map<string, Fact>();
  let instead: readonly Fact[] | null = null;

  const missing = (those: Iterable<Fact>, kept: Kept): string[] => [...those].flatMap((fact) => (fact.isIn(kept) ? [] : [fact.what]));
  const ofLogbook = (): Fact[] => [...facts.values()].filter((fact) => fact.of === 'logbook');

  function became(): void {
    for (const { what } of ofLogbook()) facts.delete(what);
    for (const fact of instead ?? []) facts.set(fact.what, fact);
    instead = null;
  }

  return {
    standing: () => facts.size,
    hold: (fact) => void facts.set(fact.what, fact),
    drop(what) {
      for (const name of facts.keys()) if (what(name)) facts.delete(name);
    },
    mayBecome: (those) => void (instead = those),
    became,
    lost(kept) {
      if (instead !== null && missing(ofLogbook(), kept).length > 0 && missing(instead, kept).length === 0) became();
      instead = null;
      return [...missing(facts.values(), kept), ...unfit(kept)];
    },
  };
}

/** What was written in part, or put aside since; an older store is judged as the panel reads it. */
function unfit({ local }: Kept): readonly string[] {
  const migrated = migrate(local);
  const read = migrated.is === 'changed' ? migrated.stored : local;
  const aside = Object.keys(local).filter((key) => key.startsWith('set-aside:'));
  return [...contentsOf(read).spoilt.map(({ key, field }) => `“${key}” is spoilt at ${field ?? 'its root'}`), ...aside.map((key) => `put aside: ${key}`)];
}

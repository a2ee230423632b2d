// Kit, logbook and settings: what the person owns, measured, entered and chose. Changed here at once and written at once;
// what another window writes is taken over, and where both changed the kit, neither change is lost.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { Kit } from '../../kit/kit.ts';
import type { HandRecord } from '../../logbook/byHand.ts';
import type { Entry } from '../../logbook/entry.ts';
import type { KitNote } from '../../logbook/kitNote.ts';
import type { JobPlan } from '../../logbook/plan/jobPlan.ts';
import type { ProofRecord } from '../../logbook/proofRecord.ts';
import type { LogRecord } from '../../logbook/record.ts';
import { byHandKey, entryKey, KEY, noteKey, proofKey, recordKey } from '../../logbook/keys.ts';
import { newestFirst } from '../../logbook/newestFirst.ts';
import type { Contents, CheckedStore, Stored } from '../../logbook/stored.ts';
import type { Settings } from '../../settings.ts';
import { USUAL_SETTINGS } from '../../usualSettings.ts';
import type { Moment } from '../../units.ts';
import type { Keeper } from './keeper.ts';
import type { SettingsPatch } from './session.ts';

export interface LibraryStore {
  readonly kit: ReadonlySignal<Kit>;
  readonly records: ReadonlySignal<readonly LogRecord[]>;
  readonly byHand: ReadonlySignal<readonly HandRecord[]>;
  readonly entries: ReadonlySignal<readonly Entry[]>;
  readonly notes: ReadonlySignal<readonly KitNote[]>;
  readonly proofs: ReadonlySignal<readonly ProofRecord[]>;
  readonly settings: ReadonlySignal<Settings>;
  readonly plan: ReadonlySignal<JobPlan | null>;
  readonly backedUp: ReadonlySignal<Moment | null>;
  /** Until it was taken in nothing can be saved, or what lies on disk would be overwritten unread. */
  take(contents: Contents): void;
  isFilled(): boolean;
  /** What another window has changed. */
  changed(changes: Stored, read: CheckedStore): void;
  changeKit(kit: Kit): void;
  changeSettings(patch: SettingsPatch): void;
  record(record: LogRecord): Promise<void>;
  withdraw(id: string): Promise<void>;
  /** Shows the records changed, as they are on disk already. */
  rewriteRecords(change: <Part>(part: Part) => Part): void;
  addByHand(record: HandRecord): void;
  /** Resolves when it is on disk. */
  addEntry(entry: Entry): Promise<void>;
  withdrawEntry(id: string): Promise<void>;
  addNote(note: KitNote): void;
  /** Resolves when it is on disk. */
  addProof(proof: ProofRecord): Promise<void>;
  withdrawProof(id: string): Promise<void>;
  changePlan(plan: JobPlan | null): void;
  backUp(at: Moment): void;
}

/** `settled` gives settings that are in order, or null; what is not is not taken over. */
export function createLibrary(keeper: Keeper, settled: (wanted: Settings) => Settings | null): LibraryStore {
  const kit = signal<Kit>({ bodies: [], lenses: [], converters: [], situations: [] });
  const records = signal<readonly LogRecord[]>([]);
  const byHand = signal<readonly HandRecord[]>([]);
  const entries = signal<readonly Entry[]>([]);
  const notes = signal<readonly KitNote[]>([]);
  const proofs = signal<readonly ProofRecord[]>([]);
  const settings = signal<Settings>(USUAL_SETTINGS);
  const plan = signal<JobPlan | null>(null);
  const backedUp = signal<Moment | null>(null);
  let filled = false;

  function changeKit(changed: Kit): void {
    kit.value = changed;
    void keeper.keep({ [KEY.kit]: changed });
  }

  /** Two windows may have changed the kit at the same moment: both changes stay, and the disk gets what both make. */
  async function joinKit(foreign: Kit): Promise<void> {
    const { joinKits } = await import('../../logbook/backup/joinKits.ts');
    const joined = joinKits(kit.value, foreign);
    if (joined.kit !== kit.value) kit.value = joined.kit;
    if (!joined.known) void keeper.keep({ [KEY.kit]: joined.kit });
  }

  return {
    kit,
    records,
    byHand,
    entries,
    notes,
    proofs,
    settings,
    plan,
    backedUp,
    isFilled: () => filled,
    changeKit,
    take(contents) {
      filled = true;
      kit.value = contents.kit;
      records.value = contents.records;
      byHand.value = contents.byHand;
      entries.value = contents.entries;
      notes.value = contents.notes;
      proofs.value = contents.proofs;
      settings.value = contents.settings;
      plan.value = contents.plan;
      backedUp.value = contents.backup;
    },
    changed(changes, { contents, spoilt }) {
      const isFit = (key: string): boolean => key in changes && spoilt.every((one) => one.key !== key);
      const isForeign = (key: string): boolean => isFit(key) && !keeper.waitsFor(key);
      const joined = <Item extends { id: string }>(known: readonly Item[], keyOf: (id: string) => string, brought: readonly Item[]) =>
        Object.keys(changes).some((key) => key.startsWith(keyOf('')))
          ? [...known.filter(({ id }) => !isForeign(keyOf(id))), ...brought.filter(({ id }) => isForeign(keyOf(id)))]
          : known;
      if (isFit(KEY.kit) && changes[KEY.kit] !== undefined) {
        if (KEY.replaced in changes) kit.value = contents.kit;
        else void joinKit(contents.kit);
      }
      if (isForeign(KEY.settings)) settings.value = contents.settings;
      if (isForeign(KEY.plan)) plan.value = contents.plan;
      if (isForeign(KEY.backup)) backedUp.value = contents.backup;
      const known = records.value;
      const now = joined(known, recordKey, contents.records);
      if (now !== known) records.value = newestFirst(now);
      byHand.value = joined(byHand.value, byHandKey, contents.byHand);
      entries.value = joined(entries.value, entryKey, contents.entries);
      notes.value = joined(notes.value, noteKey, contents.notes);
      proofs.value = joined(proofs.value, proofKey, contents.proofs);
    },
    changeSettings(patch) {
      const { manner, voice, logbook, language, look } = settings.value;
      const wanted = {
        ...settings.value,
        ...patch,
        manner: { ...manner, ...patch.manner },
        voice: { ...voice, ...patch.voice },
        logbook: { ...logbook, ...patch.logbook },
        language: { ...language, ...patch.language },
        look: { ...look, ...patch.look },
      };
      const result = settled(wanted);
      if (!result) return;
      settings.value = result;
      if (filled) void keeper.keep({ [KEY.settings]: settings.value });
    },
    record(record) {
      records.value = newestFirst([...without(records.value, record.id), record]);
      return keeper.keep({ [recordKey(record.id)]: record });
    },
    withdraw(id) {
      records.value = without(records.value, id);
      return keeper.keep({ [recordKey(id)]: undefined });
    },
    rewriteRecords(change) {
      records.value = change(records.value);
    },
    addByHand(record) {
      byHand.value = [...without(byHand.value, record.id), record];
      void keeper.keep({ [byHandKey(record.id)]: record });
    },
    addEntry(entry) {
      entries.value = [...without(entries.value, entry.id), entry];
      return keeper.keep({ [entryKey(entry.id)]: entry });
    },
    withdrawEntry(id) {
      entries.value = without(entries.value, id);
      return keeper.keep({ [entryKey(id)]: undefined });
    },
    addNote(note) {
      notes.value = [...without(notes.value, note.id), note];
      void keeper.keep({ [noteKey(note.id)]: note });
    },
    addProof(proof) {
      proofs.value = [...without(proofs.value, proof.id), proof];
      return keeper.keep({ [proofKey(proof.id)]: proof });
    },
    withdrawProof(id) {
      proofs.value = without(proofs.value, id);
      return keeper.keep({ [proofKey(id)]: undefined });
    },
    changePlan(changed) {
      plan.value = changed;
      void keeper.keep({ [KEY.plan]: changed ?? undefined });
    },
    backUp(at) {
      backedUp.value = at;
      void keeper.keep({ [KEY.backup]: at });
    },
  };
}

const without = <Item extends { readonly id: string }>(items: readonly Item[], id: string): Item[] => items.filter((one) => one.id !== id);

// Kit, logbook and settings: what the person owns, measured and chose. Changed here at once and written at once; what
// another window writes is taken over.
import { signal, type ReadonlySignal } from '@preact/signals';
import * as v from 'valibot';
import { Body, EMPTY_KIT, Lens, Situation, type Kit } from '../../kit/kit.ts';
import type { LogRecord } from '../../logbook/record.ts';
import { contentsOf, isRecordKey, KEY, newestFirst, recordKey, type Contents, type Stored } from '../../logbook/stored.ts';
import { Settings, USUAL_SETTINGS } from '../../settings.ts';
import { faultsIn, NOT_READ } from './faults.ts';
import type { Keeper } from './keeper.ts';
import type { BodyDraft, LensDraft, Saved, SettingsPatch, SituationDraft } from './session.ts';

export interface Library {
  readonly kit: ReadonlySignal<Kit>;
  readonly records: ReadonlySignal<readonly LogRecord[]>;
  readonly settings: ReadonlySignal<Settings>;
  /** Until it is filled nothing can be saved, or what lies on disk would be overwritten unread. */
  fill(contents: Contents): void;
  isFilled(): boolean;
  /** What another window has changed. */
  changed(changes: Stored): void;
  saveBody(draft: BodyDraft): Saved;
  saveLens(draft: LensDraft): Saved;
  saveSituation(draft: SituationDraft): Saved;
  changeSettings(patch: SettingsPatch): void;
  record(record: LogRecord): Promise<void>;
  withdraw(id: string): Promise<void>;
}

export function createLibrary(keeper: Keeper, newId: () => string): Library {
  const kit = signal<Kit>(EMPTY_KIT);
  const records = signal<readonly LogRecord[]>([]);
  const settings = signal<Settings>(USUAL_SETTINGS);
  let filled = false;

  function save<Item extends { readonly id: string }>(
    schema: v.GenericSchema<unknown, Item>,
    draft: { readonly id?: string },
    into: (item: Item) => Kit,
  ): Saved {
    if (!filled) return { ok: false, faults: [NOT_READ] };
    const result = v.safeParse(schema, { ...draft, id: draft.id ?? newId() });
    if (!result.success) return { ok: false, faults: faultsIn(result.issues) };
    kit.value = into(result.output);
    void keeper.keep({ [KEY.kit]: kit.value });
    return { ok: true, id: result.output.id };
  }

  return {
    kit,
    records,
    settings,
    isFilled: () => filled,
    fill(contents) {
      filled = true;
      kit.value = contents.kit;
      records.value = contents.records;
      settings.value = contents.settings;
    },
    changed(changes) {
      const foreign = Object.fromEntries(Object.entries(changes).filter(([key]) => !keeper.waitsFor(key)));
      const { contents, spoilt } = contentsOf(foreign);
      const isFit = (key: string): boolean => key in foreign && spoilt.every((one) => one.key !== key);
      if (isFit(KEY.kit)) kit.value = contents.kit;
      if (isFit(KEY.settings)) settings.value = contents.settings;
      const touched = Object.keys(foreign).filter((key) => isRecordKey(key) && isFit(key));
      if (touched.length === 0) return;
      const others = records.value.filter(({ id }) => !touched.includes(recordKey(id)));
      records.value = newestFirst([...others, ...contents.records]);
    },
    saveBody: (draft) => save(Body, draft, (body) => ({ ...kit.value, bodies: replaced(kit.value.bodies, body) })),
    saveLens: (draft) => save(Lens, draft, (lens) => ({ ...kit.value, lenses: replaced(kit.value.lenses, lens) })),
    saveSituation(draft) {
      const same = kit.value.situations.find(
        (one) =>
          one.body === draft.body && one.lens === draft.lens && one.focalLength === draft.focalLength && one.distance === draft.distance,
      );
      if (same && draft.id === undefined) return { ok: true, id: same.id };
      if (kit.value.bodies.every(({ id }) => id !== draft.body)) return { ok: false, faults: [{ field: 'body', sentence: 'Choose a body.' }] };
      if (kit.value.lenses.every(({ id }) => id !== draft.lens)) return { ok: false, faults: [{ field: 'lens', sentence: 'Choose a lens.' }] };
      return save(Situation, draft, (situation) => ({ ...kit.value, situations: replaced(kit.value.situations, situation) }));
    },
    changeSettings(patch) {
      const { manner, voice } = settings.value;
      const wanted = { ...settings.value, ...patch, manner: { ...manner, ...patch.manner }, voice: { ...voice, ...patch.voice } };
      const result = v.safeParse(Settings, wanted);
      if (!result.success) return;
      settings.value = result.output;
      if (filled) void keeper.keep({ [KEY.settings]: settings.value });
    },
    record(record) {
      records.value = newestFirst([...records.value.filter(({ id }) => id !== record.id), record]);
      return keeper.keep({ [recordKey(record.id)]: record });
    },
    withdraw(id) {
      records.value = records.value.filter((record) => record.id !== id);
      return keeper.keep({ [recordKey(id)]: undefined });
    },
  };
}

/** The list with the item in the place of the one with its id, or at the end. */
function replaced<Item extends { readonly id: string }>(items: readonly Item[], item: Item): Item[] {
  return items.some(({ id }) => id === item.id) ? items.map((one) => (one.id === item.id ? item : one)) : [...items, item];
}

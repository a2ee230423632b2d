// What the person writes into the logbook besides sweeps: values entered in the camera, values put in by hand, and
// what happened to the kit.
import * as v from 'valibot';
import type { Conditions } from '../../logbook/conditions.ts';
import { Entry } from '../../logbook/entry.ts';
import { KitNote } from '../../logbook/kitNote.ts';
import { recordByHand, type HandDraft } from '../../logbook/recordByHand.ts';
import { DONE, failed, type Result } from '../../result.ts';
import { words } from '../../words/catalogue.ts';
import { faultsIn } from './faults.ts';
import type { LibraryStore } from './library.ts';

export interface Writings {
  enter(entry: Omit<Entry, 'id'>): Result;
  writeByHand(draft: HandDraft): Result;
  noteOn(note: Omit<KitNote, 'id'>): Result;
  tellConditions(record: string, conditions: Conditions): Result;
}

export function createWritings(library: LibraryStore, newId: () => string): Writings {
  function added<Item>(schema: v.GenericSchema<unknown, Item>, draft: object, add: (item: Item) => void): Result {
    const checked = v.safeParse(schema, { ...draft, id: newId() });
    if (!checked.success) return failed(faultsIn(checked.issues)[0]?.sentence ?? words('kit').fault['does not fit']);
    add(checked.output);
    return DONE;
  }

  return {
    enter: (entry) => added(Entry, entry, (one) => void library.addEntry(one)),
    noteOn: (note) => added(KitNote, note, library.addNote),
    tellConditions(id, conditions) {
      const record = library.records.peek().find((one) => one.id === id);
      if (!record) return failed(words('session').recordGone);
      void library.record({ ...record, conditions });
      return DONE;
    },
    writeByHand(draft) {
      const written = recordByHand(draft, { record: newId(), entry: newId() });
      if (!written.ok) return failed(words('session').byHand(written.fault));
      library.addByHand(written.value.record);
      if (written.value.entry) void library.addEntry(written.value.entry);
      return DONE;
    },
  };
}

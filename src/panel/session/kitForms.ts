// Putting what was typed about the kit into it: checked field by field, and refused with a sentence where another window
// has changed the same thing since the form was opened.
import * as v from 'valibot';
import { put, retire, type KitItem, type KitList } from '../../kit/change.ts';
import { Body, Converter, Lens, newBody, newLens, Situation } from '../../kit/kit.ts';
import type { Moment } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { drawnFault, faultsIn } from './faults.ts';
import type { LibraryStore } from './library.ts';
import { failed, got } from '../../result.ts';
import type { BodyDraft, LensDraft, Saved, SituationDraft } from './session.ts';

export interface KitForms {
  saveBody(draft: BodyDraft): Saved;
  saveLens(draft: LensDraft): Saved;
  saveSituation(draft: SituationDraft): Saved;
  putKit<List extends KitList>(list: List, item: KitItem[List], seen: Moment | null): Saved;
  retireKit(list: KitList, id: string, away: boolean): Saved;
}

const SCHEMA: { readonly [List in KitList]: v.GenericSchema<unknown, KitItem[List]> } = {
  bodies: Body,
  lenses: Lens,
  converters: Converter,
  situations: Situation,
};

export function createKitForms(library: Pick<LibraryStore, 'kit' | 'changeKit'>, newId: () => string, now: () => Moment): KitForms {
  const { kit, changeKit } = library;

  function putKit<List extends KitList>(list: List, item: unknown, seen: Moment | null): Saved {
    const schema: v.GenericSchema<unknown, KitItem[List]> = SCHEMA[list];
    const checked = v.safeParse(schema, item);
    if (!checked.success) return failed(faultsIn(checked.issues));
    const changed = put(kit.value, list, checked.output, seen, now());
    if (!changed.ok) return failed([drawnFault(null, () => words('kit').unsaved(changed.fault))]);
    changeKit(changed.value);
    return got(checked.output.id);
  }

  return {
    putKit: (list, item, seen) => putKit(list, item.id === '' ? { ...item, id: newId() } : item, seen),
    retireKit(list, id, away) {
      const changed = retire(kit.value, list, id, away ? now() : null, now());
      if (!changed.ok) return failed([drawnFault(null, () => words('kit').unsaved(changed.fault))]);
      changeKit(changed.value);
      return got(id);
    },
    saveBody: (draft) => putKit('bodies', { ...newBody(newId(), '', now()), ...draft }, null),
    saveLens: (draft) => putKit('lenses', { ...newLens(newId(), '', now()), ...draft }, null),
    saveSituation(wanted) {
      const same = kit.value.situations.find(
        (one) =>
          one.body === wanted.body &&
          one.lens === wanted.lens &&
          one.converter === wanted.converter &&
          one.focalLength === wanted.focalLength &&
          one.distance === wanted.distance,
      );
      if (same) return same.retired === null ? got(same.id) : putKit('situations', { ...same, retired: null }, same.changed);
      return putKit('situations', { id: newId(), changed: now(), retired: null, ...wanted }, null);
    },
  };
}

// Contract of the stored layout: what fits is used, what does not is named whole, and older layouts are brought up in order.
import { describe, expect, test } from 'vitest';
import { EMPTY_KIT } from '../../src/kit/kit.ts';
import { migrate, MIGRATIONS, type Migration } from '../../src/logbook/migrations.ts';
import { contentsOf, isEmpty, type Stored } from '../../src/logbook/stored.ts';
import { USUAL_SETTINGS } from '../../src/usualSettings.ts';
import { opened } from '../sweep/staged.ts';

describe('contents', () => {
  test('an empty store holds the usual settings and nothing else', () => {
    expect(contentsOf({})).toEqual({
      contents: { settings: USUAL_SETTINGS, kit: EMPTY_KIT, records: [], byHand: [], entries: [], notes: [], proofs: [], live: null, plan: null, backup: null },
      spoilt: [],
    });
  });

  test('a live journal is read back as it was written', () => {
    expect(contentsOf(JSON.parse(JSON.stringify({ live: [opened()] }))).contents.live).toEqual([opened()]);
  });

  test.each<[string, unknown, string | null]>([
    ['settings', { sound: 'loud' }, 'manner'],
    ['kit', null, null],
    ['kit', { bodies: [{ name: 'Velde M1' }], lenses: [], situations: [] }, 'bodies.0.id'],
    ['record:x', [], 'id'],
    ['proof:x', { id: 'x', at: 5, practice: false, crops: null, proof: { is: 'one' } }, 'subject'],
    ['live', [{ did: 'ran', at: 5 }], null],
    ['live', [], null],
  ])('a spoilt entry under "%s" is handed back whole, with the place that does not fit', (key, value, field) => {
    const { contents, spoilt } = contentsOf({ [key]: value });
    expect(spoilt).toEqual([{ key, value, field }]);
    expect(contents).toEqual(contentsOf({}).contents);
  });

  test('keys it does not know, and what was set aside, are left alone', () => {
    expect(contentsOf({ 'set-aside:kit:5': 1, later: 2 }).spoilt).toEqual([]);
  });

  test('a store is empty when it holds nothing of the person’s own', () => {
    expect(isEmpty({ version: 1, settings: USUAL_SETTINGS })).toBe(true);
    expect(isEmpty({ 'set-aside:kit:5': {} })).toBe(false);
  });
});

describe('migrations', () => {
  test('a store without a version becomes the newest with everything as it was', () => {
    const stored = { kit: EMPTY_KIT, 'record:a': { any: 'thing' } };
    expect(migrate(stored)).toEqual({ is: 'changed', from: 0, stored: { ...stored, version: 3 } });
  });

  test('the newest version is left as it is', () => {
    expect(migrate({ version: 3 })).toEqual({ is: 'current' });
  });

  test('they run in order from the version found', () => {
    const add = (to: number): Migration => ({ to, change: (stored: Stored) => ({ ...stored, ran: [...((stored['ran'] as number[]) ?? []), to] }) });
    expect(migrate({ version: 1 }, [add(1), add(2), add(3)])).toMatchObject({ stored: { version: 3, ran: [2, 3] } });
  });

  test('they are numbered upwards without a gap', () => {
    expect(MIGRATIONS.map(({ to }) => to)).toEqual(MIGRATIONS.map((_, index) => index + 1));
  });

  test('a newer layout is not touched', () => {
    expect(migrate({ version: 4 })).toEqual({ is: 'too new' });
  });
});

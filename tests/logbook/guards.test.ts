// Contract of what is asked of a logbook that holds nothing of it: the answer is none, and nothing is thrown.
import { expect, test } from 'vitest';
import { unknownConditions } from '../../src/logbook/conditions.ts';
import { dueAgain, USUAL_LIMITS } from '../../src/logbook/due.ts';
import { adviceOnEntering } from '../../src/logbook/entering/advice.ts';
import { shownThere } from '../../src/logbook/entering/shown.ts';
import type { History } from '../../src/logbook/history.ts';
import { rememberedLamp } from '../../src/logbook/lampMemory.ts';
import { memoryFor } from '../../src/logbook/memory.ts';
import { narrow, shelfOf } from '../../src/logbook/shelf.ts';
import { standingOf } from '../../src/logbook/standing.ts';
import { evidenceOf } from '../../src/logbook/workshop.ts';
import { withoutHeard } from '../../src/logbook/withoutHeard.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { moment } from '../../src/units.ts';
import { orThrown } from '../kept/orThrown.ts';
import { libraryWith, sweepRecord, T0 } from './libraryWith.ts';

const subject = { situation: 's', body: 'b', lens: 'l', focalLength: 85, distance: 4250 } as History['subject'];
const EMPTY: History = { subject, measured: [], entries: [], proofs: [] };
const TODAY = { at: moment(T0), temperature: null };
const [entered] = libraryWith({ entries: [{ id: 'e', conditions: unknownConditions(moment(0)) }] }).entries;

test('a situation without a measurement, an entry or a photograph', () => {
  expect(orThrown(() => dueAgain(EMPTY, [], TODAY, USUAL_LIMITS))).toEqual([]);
  expect(orThrown(() => dueAgain({ ...EMPTY, entries: entered ? [entered] : [] }, [], TODAY, USUAL_LIMITS))).toEqual([]);
  expect(orThrown(() => standingOf(EMPTY))).toMatchObject({ measured: null, entered: null, state: 'never measured', value: null, at: null });
  expect(orThrown(() => shownThere({ subject, measured: null, history: EMPTY }, USUAL_SCALE))).toBeNull();
});

test('a kit without the body, the lens or the situation', () => {
  const { kit } = libraryWith({});
  const advice = (body: string, lens: string) => orThrown(() => adviceOnEntering({ body, lens }, kit, [], { by: 'worst share' }));
  expect([advice('gone', 'l'), advice('b', 'gone')]).toEqual([null, null]);
  expect(advice('b', 'l')).toMatchObject({ places: [] });
  const situation = kit.situations[0]!;
  expect(orThrown(() => memoryFor({ ...situation, body: 'gone' }, [], kit))).toEqual({ centres: [], halfWidth: null });
  expect(orThrown(() => memoryFor({ ...situation, lens: 'gone' }, [], kit))).toEqual({ centres: [], halfWidth: null });
  expect(orThrown(() => rememberedLamp('gone', [], kit))).toEqual([]);
});

test('records of a situation that the kit does not know', () => {
  const library = libraryWith({ situations: [], records: [sweepRecord('r', T0, 2, 8)] });
  const shelf = orThrown(() => shelfOf(library, TODAY, USUAL_LIMITS));
  expect(shelf).toMatchObject([{ situation: null, retired: false, value: 5 }]);
  expect(typeof shelf !== 'string' && orThrown(() => narrow(shelf, 'b', 'all'))).toEqual([]);
  const [record] = library.records;
  const evidence = orThrown(() => (record ? evidenceOf(record, library) : null));
  expect(evidence).toMatchObject({ pairing: { body: null, lens: null, converter: null }, aside: null, proofs: [], inFocus: { holds: [] } });
});

test('lists that hold nothing, or what is no object', () => {
  for (const value of [[null], [undefined, 5], { a: null }, [[null]]]) expect(orThrown(() => withoutHeard(value))).toBe(value);
});

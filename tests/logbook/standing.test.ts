import { describe, expect, it } from 'vitest';
import { middleOf } from '../../src/logbook/byHand.ts';
import { unknownConditions } from '../../src/logbook/conditions.ts';
import { dueAgain, USUAL_LIMITS, type DueReason } from '../../src/logbook/due.ts';
import { historiesOf, linesOf, type HistoryLine } from '../../src/logbook/history.ts';
import { recordByHand } from '../../src/logbook/recordByHand.ts';
import { narrow, shelfOf } from '../../src/logbook/shelf.ts';
import { standingOf } from '../../src/logbook/standing.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { millimetres, moment } from '../../src/units.ts';
import { DAY, libraryWith, sweepRecord, T0, type Parts } from './libraryWith.ts';

const idOf = (line: HistoryLine): string => (line.line === 'entered' ? line.entry : line.line === 'measured' ? line.measured : line.record).id;
const historyOf = (parts: Parts) => historiesOf(libraryWith(parts)).get('s')!;
const at = (days: number) => moment(T0 + days * DAY);
const warm = (told: number, temperature: number) => ({ ...unknownConditions(moment(told)), temperature });

describe('the standing of a situation', () => {
  const stateOf = (parts: Parts) => {
    const { state, value } = standingOf(historyOf(parts));
    return [state, value];
  };
  const swept = [sweepRecord('r', T0, 2, 9)];

  it('is never measured, measured, entered, or both and they differ', () => {
    expect(stateOf({})).toEqual(['never measured', null]);
    expect(stateOf({ records: swept })).toEqual(['measured', 5]);
    expect(stateOf({ records: swept, entries: [{ id: 'e', at: at(1), value: 5 }] })).toEqual(['entered', 5]);
    expect(stateOf({ records: swept, entries: [{ id: 'e', at: at(1), value: 7 }] })).toEqual(['differ', 7]);
    expect(stateOf({ entries: [{ id: 'e', value: 3 }] })).toEqual(['entered', 3]);
  });

  it('goes by the latest entry, keeps the earlier ones, and takes either middle of an even band', () => {
    const parts = {
      entries: [
        { id: 'new', at: at(9), value: 4 },
        { id: 'old', at: at(1), value: 6 },
      ],
      byHand: [band('h', 8, 2, 7, 4)],
    };
    expect(stateOf(parts)).toEqual(['entered', 4]);
    expect(stateOf({ ...parts, entries: [{ id: 'e', at: at(9), value: 5 }] })).toEqual(['entered', 5]);
    expect(linesOf(historyOf(parts)).map(idOf)).toEqual(['new', 'h', 'old']);
  });

  it('is not made by the practice camera, nor hidden by a sweep that named no value', () => {
    const practice = sweepRecord('p', T0 + DAY, -9, -5, { practice: true });
    const nothing = sweepRecord('n', T0 + DAY, 0, 0, {
      outcome: { found: 'nothing', tally: { holds: 12, seconds: 100 } },
    });
    expect(stateOf({ records: [...swept, practice, nothing] })).toEqual(['measured', 5]);
    expect(stateOf({ records: [nothing] })).toEqual(['measured', null]);
  });

  it('counts a sweep once, when a table or another computer had brought a stand-in for it', () => {
    expect(historyOf({ records: swept, byHand: [{ id: 'r', source: 'from another computer' }] }).measured).toHaveLength(1);
  });
});

describe('a value by hand', () => {
  const draft = { subject: historyOf({}).subject, scale: USUAL_SCALE, at: T0, conditions: unknownConditions(T0) };
  const ids = { record: 'r', entry: 'e' };

  it('has its centre between the ends, and both choices where the count is even, the one nearer zero first', () => {
    expect(middleOf(USUAL_SCALE, 2, 8)).toEqual({ ok: true, value: { centre: 5, choices: [5] } });
    expect(middleOf(USUAL_SCALE, 9, 2)).toEqual({ ok: true, value: { centre: 5.5, choices: [5, 6] } });
    expect(middleOf(USUAL_SCALE, -9, -2)).toEqual({ ok: true, value: { centre: -5.5, choices: [-5, -6] } });
    expect(middleOf({ ...USUAL_SCALE, step: 2 }, -2, 4)).toEqual({ ok: true, value: { centre: 1, choices: [0, 2] } });
    expect(middleOf(USUAL_SCALE, 2, 21)).toEqual({ ok: false, fault: { is: 'ends off the scale', scale: USUAL_SCALE } });
  });

  it('in force is an entry at once; one measured on paper is not', () => {
    const inForce = recordByHand({ ...draft, typed: { known: 'value', chosen: -3 } }, ids);
    expect(inForce).toMatchObject({
      ok: true,
      value: { record: { source: 'by hand' }, entry: { id: 'e', value: -3, record: 'r' } },
    });
    const onPaper = recordByHand({ ...draft, typed: { known: 'band', one: 9, other: 2, chosen: 6 } }, ids);
    expect(onPaper).toMatchObject({
      ok: true,
      value: { record: { finding: { low: 2, high: 9, chosen: 6 } }, entry: null },
    });
  });

  it('is refused off the scale or outside its own band', () => {
    expect(recordByHand({ ...draft, typed: { known: 'value', chosen: 2.5 } }, ids)).toMatchObject({ ok: false });
    expect(recordByHand({ ...draft, typed: { known: 'band', one: 2, other: 9, chosen: 1 } }, ids)).toMatchObject({
      ok: false,
    });
  });
});

describe('due again', () => {
  const due = (parts: Parts, days = 30, temperature: number | null = null): DueReason[] => {
    const library = libraryWith(parts);
    return dueAgain(historiesOf(library).get('s')!, library.notes, { at: at(days), temperature: temperature as never }, USUAL_LIMITS);
  };
  const swept = sweepRecord('r', T0, 2, 9);

  it('is nothing that was never measured, and nothing measured lately', () => {
    expect(due({})).toEqual([]);
    expect(due({ records: [swept] })).toEqual([]);
  });

  it('is what is old, since the day it became so', () => {
    expect(due({ records: [swept] }, 400)).toEqual([{ why: 'age', since: at(365), days: 400 }]);
  });

  it('is what had new firmware or service since', () => {
    const notes = [
      { id: 'n', at: at(3), what: 'firmware', note: 'Version 2.' },
      { id: 'o', at: at(-3), what: 'service' },
    ];
    expect(due({ records: [swept], notes })).toEqual([{ why: 'firmware', since: at(3), note: 'Version 2.' }]);
  });

  it('is what was measured in another season', () => {
    const cold = { byHand: [{ id: 'h', conditions: warm(0, -2) }] };
    expect(due(cold, 30, 20)).toMatchObject([{ why: 'temperature', before: -2, now: 20 }]);
    expect([due(cold, 30, 10), due(cold, 30, null)]).toEqual([[], []]);
  });

  it('is what failed its re-check, until a value is entered after it', () => {
    const parts = {
      records: [swept, sweepRecord('again', at(20), 7, 12)],
      entries: [{ id: 'e', at: at(1), value: 5 }],
    };
    expect(due(parts).map(({ why }) => why)).toContain('re-check');
    const entered = { ...parts, entries: [...parts.entries, { id: 'f', at: at(21), value: 9 }] };
    expect(due(entered).map(({ why }) => why)).not.toContain('re-check');
    expect(due({ ...parts, entries: [{ id: 'e', at: at(1), value: 8 }] }).map(({ why }) => why)).not.toContain('re-check');
  });

  it('is what drifted between the last two measurements further than both intervals allow', () => {
    expect(due({ records: [swept, sweepRecord('again', at(20), 6, 12)] })).toMatchObject([{ why: 'drift', since: at(20), apart: 3.5 }]);
    expect(due({ records: [swept, sweepRecord('again', at(20), 3, 10)] })).toEqual([]);
  });
});

describe('the list', () => {
  const library = libraryWith({
    bodies: [{ id: 'b' }, { id: 'b-2', name: 'Velde M2' }],
    situations: [{ id: 's' }, { id: 'fresh', body: 'b-2' }, { id: 'away', retired: 5 }],
    records: [sweepRecord('r', T0, 2, 9)],
    entries: [
      {
        id: 'e',
        at: T0,
        subject: {
          situation: 'elsewhere',
          body: 'M9',
          lens: 'X',
          focalLength: millimetres(50),
          distance: millimetres(2500),
        },
      },
    ],
  });
  const shelf = shelfOf(library, { at: at(400), temperature: null }, USUAL_LIMITS);
  const shown = (body: string | null, show: Parameters<typeof narrow>[2]) => narrow(shelf, body, show).map(({ subject }) => subject.situation);

  it('holds every situation of the kit and those only records know, never measured last', () => {
    expect(shown(null, 'all')).toEqual(['s', 'elsewhere', 'fresh']);
  });

  it('is narrowed to a body and to a question', () => {
    expect([shown('b-2', 'all'), shown(null, 'never measured'), shown(null, 'due again')]).toEqual([['fresh'], ['fresh'], ['s', 'elsewhere']]);
    expect([shown(null, 'not entered'), shown(null, 'retired'), shown('b', 'due again')]).toEqual([['s'], ['away'], ['s']]);
  });
});

function band(id: string, days: number, low: number, high: number, chosen: number) {
  return { id, at: at(days), finding: { known: 'band', low, high, chosen } };
}

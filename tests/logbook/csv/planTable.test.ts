// Contract of planning a table: which lines add what, by which kit they go, and what keeps a line out.
import { describe, expect, test } from 'vitest';
import { planTable } from '../../../src/logbook/csv/planTable.ts';
import { EMPTY_ROW } from '../../../src/logbook/csv/readTable.ts';
import type { Row } from '../../../src/logbook/csv/row.ts';
import { moment } from '../../../src/units.ts';
import { libraryWith, T0 } from '../libraryWith.ts';

const ROW: Row = { ...EMPTY_ROW, kind: 'sweep', at: moment(5), body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: 85, distance: 4250, value: 4 };
const library = libraryWith({ bodies: [{ id: 'b', serial: '11' }, { id: 'b2', name: 'Velde M2' }], converters: [{ id: 'c' }] }); // prettier-ignore
const planned = (...rows: readonly Partial<Row>[]) =>
  planTable(library, { rows: rows.map((row, at) => ({ line: at + 2, row: { ...ROW, ...row } })), faults: [] }, T0);
const findings = (...rows: readonly Partial<Row>[]) => planned(...rows).library.byHand.map(({ finding }) => finding);

describe('a line', () => {
  test('with a band takes the middle towards zero, unless it says which value', () => {
    expect(
      findings(
        { low: 2, high: 7, value: null },
        { low: -7, high: -2, value: null },
        { low: 2, high: 7, value: 6 },
        { low: 2, high: null, value: 3 },
        { low: null, high: 2, value: 0 },
        { low: 5, high: 5, value: null },
      ),
    ).toEqual([
      { known: 'band', low: 2, high: 7, chosen: 4 },
      { known: 'band', low: -7, high: -2, chosen: -4 },
      { known: 'band', low: 2, high: 7, chosen: 6 },
      { known: 'value', chosen: 3 },
      { known: 'value', chosen: 0 },
      { known: 'band', low: 5, high: 5, chosen: 5 },
    ]);
  });

  test('without a value and a whole band adds nothing, nor does an entry without its value or what photographs showed', () => {
    const lines = [
      { value: null },
      { value: null, low: 2 },
      { value: null, high: 2 },
      { kind: 'entered', value: null, low: 1, high: 2 },
      { kind: 'one picture' },
    ] as const;
    expect(planned(...lines)).toMatchObject({ added: 0, withoutValue: 5, same: 0, faults: [] });
  });

  test('that is entered is an entry, all others are by hand and say where they are from', () => {
    const { added, library: after } = planned({ kind: 'entered' }, { kind: 'by hand' }, { kind: 'from another computer' }, { kind: 'sweep', at: null });
    expect(added).toBe(4);
    expect(after.entries.map(({ value, at, record }) => ({ value, at, record }))).toEqual([{ value: 4, at: 5, record: null }]);
    expect(after.byHand.map(({ source, at }) => ({ source, at }))).toEqual([
      { source: 'by hand', at: 5 },
      { source: 'from another computer', at: 5 },
      { source: 'from a table', at: T0 },
    ]);
  });

  test('that came before, here or in the table, is the same', () => {
    expect(planned({ id: 'x' }, { id: 'x', value: 7 }, {}, {})).toMatchObject({ added: 2, same: 2 });
  });

  test('that does not fit says which column, in the order of lines', () => {
    const { faults, added } = planTable(
      library,
      {
        rows: [
          { line: 9, row: { ...ROW, value: 201 } },
          { line: 3, row: { ...ROW, value: 4, low: 1.5, high: 2 } },
          { line: 4, row: { ...ROW, low: 1, high: -201 } },
          { line: 5, row: { ...ROW, converter: 'Orrin 2×' } },
          { line: 6, row: { ...ROW, value: 200 } },
        ],
        faults: [{ line: 4, column: null, fault: { is: 'no correction', value: 0 } }],
      },
      T0,
    );
    expect(added).toBe(1);
    expect(faults).toEqual([
      { line: 3, column: 'low', fault: { is: 'no correction', value: 1.5 } },
      { line: 4, column: null, fault: { is: 'no correction', value: 0 } },
      { line: 4, column: 'high', fault: { is: 'no correction', value: -201 } },
      { line: 5, column: 'converter', fault: { is: 'no such converter', converter: 'Orrin 2×' } },
      { line: 9, column: 'value', fault: { is: 'no correction', value: 201 } },
    ]);
  });
});

describe('kit', () => {
  const kitOf = (row: Partial<Row>) => {
    const { library: after, newKit } = planned(row);
    return { body: after.kit.situations.find(({ id }) => id === after.byHand[0]?.subject.situation)?.body.replace(/^table-.*/, 'new'), newKit };
  };

  test('goes by its serial, then by its name, however it is written', () => {
    expect(kitOf({ body: 'anything', bodySerial: '11' })).toEqual({ body: 'b', newKit: [] });
    expect(kitOf({ body: '  velde   M1 ' })).toEqual({ body: 'b', newKit: [] });
    expect(kitOf({ body: 'Velde M2', bodySerial: '22' })).toEqual({ body: 'b2', newKit: [] });
    expect(kitOf({ body: 'Velde M1', bodySerial: '22' })).toEqual({ body: 'new', newKit: [] });
    expect(kitOf({ body: 'Velde M3' })).toEqual({ body: 'new', newKit: ['Velde M3'] });
  });

  test('is set up once, and a situation that is there is taken', () => {
    const { library: after, newKit, added } = planned({ body: 'Velde M3', value: 1 }, { body: 'Velde M3', value: 2 }, { value: 3 });
    expect([newKit, added, after.kit.bodies.length, after.kit.situations.length]).toEqual([['Velde M3'], 3, 3, 2]);
    expect(after.byHand[2]?.subject.situation).toBe('s');
  });

  test('in another focal length, at another distance or with a converter is another situation', () => {
    const { library: after } = planned({ focalLength: 80 }, { distance: 4000 }, { converter: 'orrin 1.4×' }, {});
    expect(after.kit.situations.map(({ focalLength, distance, converter }) => [focalLength, distance, converter])).toEqual([
      [85, 4250, null],
      [80, 4250, null],
      [85, 4000, null],
      [85, 4250, 'c'],
    ]);
  });
});

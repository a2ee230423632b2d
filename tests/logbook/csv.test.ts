import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { readCellNumber, readCellText, writeCellNumber, writeText } from '../../src/logbook/csv/cell.ts';
import { readCsv, writeCsv } from '../../src/logbook/csv/csv.ts';
import type { Delimiter } from '../../src/logbook/csv/delimiter.ts';
import { planTable } from '../../src/logbook/csv/planTable.ts';
import { guessMapping, missingFrom, readRows, readTable } from '../../src/logbook/csv/readTable.ts';
import { tableRowsOf } from '../../src/logbook/csv/row.ts';
import { styleFor, WITH_COMMAS, WITH_SEMICOLONS } from '../../src/logbook/csv/style.ts';
import { writeRows, writeTable } from '../../src/logbook/csv/writeTable.ts';
import { EMPTY_LIBRARY, Library } from '../../src/logbook/library.ts';
import { words } from '../../src/words/catalogue.ts';
import { anyLibrary } from './anyLibrary.ts';
import { libraryWith, sweepRecord, T0 } from './libraryWith.ts';

const style = fc.constantFrom(WITH_COMMAS, WITH_SEMICOLONS);

const read = (text: string) => {
  const table = readTable(text);
  if (!table.ok) throw new Error(table.fault.is);
  return readRows(table.value, guessMapping(table.value.headings));
};

describe('a table of results', { timeout: 60_000 }, () => {
  it('loses nothing on the way out and in, with commas or with semicolons', () => {
    fc.assert(
      fc.property(anyLibrary(), style, (library, written) => {
        const rows = tableRowsOf(library);
        fc.pre(rows.length > 0);
        const back = read(writeTable(library, written));
        expect(back.faults).toEqual([]);
        expect(back.rows.map(({ row }) => row)).toEqual(rows);
      }),
      { numRuns: 300 },
    );
  });

  it('brought back into the logbook it came from adds nothing', () => {
    fc.assert(
      fc.property(anyLibrary(), style, (library, written) => {
        fc.pre(tableRowsOf(library).length > 0);
        const plan = planTable(library, read(writeTable(library, written)), T0);
        expect([plan.added, plan.faults, plan.library.kit]).toEqual([0, [], library.kit]);
      }),
      { numRuns: 100 },
    );
  });

  it('carries no formula: every field that is no plain number begins harmlessly', () => {
    fc.assert(
      fc.property(anyLibrary(), style, (library, written) => {
        const lines = readCsv(writeTable(library, written));
        const cells = lines.ok ? lines.value.flatMap((line) => line.cells) : ['=unread'];
        expect(cells.filter((cell) => /^\s*[=+\-@\t\r]/.test(cell) && !/^-?\d+([.,]\d+)?(e[+-]\d+)?$/.test(cell))).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it('of what photographs showed brings no value into another logbook, whatever it holds: its figures are whole only in the backup', () => {
    fc.assert(
      fc.property(anyLibrary(), ({ version, kit, proofs }) => {
        fc.pre(proofs.some(({ practice }) => !practice));
        const shown: Library = { ...EMPTY_LIBRARY, version, kit, proofs };
        const plan = planTable(EMPTY_LIBRARY, read(writeTable(shown, WITH_COMMAS)), T0);
        expect([plan.added, plan.faults, plan.newKit, plan.library]).toEqual([0, [], [], EMPTY_LIBRARY]);
        expect(plan.withoutValue).toBe(proofs.filter(({ practice }) => !practice).length);
      }),
      { numRuns: 200 },
    );
  });

  it('brought in twice adds nothing the second time, and sets each piece of kit up once', () => {
    const rows = read(
      'Lens;Body;Focal length;Distance (m);Value;Date\n' +
        'Orrin 85 f/1.8;Velde M1;85;4,25;+6;2026-03-04\n' +
        'orrin 85 f/1.8;Velde M2;85;4,25;−2;2026-03-04\n' +
        'Orrin 35 f/2;Velde M1;35;1,75;0;2026-03-05\n',
    );
    const once = planTable(EMPTY_LIBRARY, rows, T0);
    expect([once.added, once.faults, once.newKit]).toEqual([3, [], ['Velde M1', 'Velde M2', 'Orrin 85 f/1.8', 'Orrin 35 f/2']]);
    expect(once.library.byHand.map(({ finding }) => finding.chosen)).toEqual([6, -2, 0]);
    expect(once.library.kit.situations[0]).toMatchObject({ focalLength: 85, distance: 4250 });
    const twice = planTable(once.library, rows, T0);
    expect([twice.added, twice.same, twice.library]).toEqual([0, 3, once.library]);
  });

  it('finds kit by serial before name, and the situation it already has', () => {
    const library = libraryWith({
      bodies: [{ id: 'b', name: 'The old one', serial: '4711' }],
      records: [sweepRecord('r', T0, 2, 9)],
    });
    const rows = read('body,body serial,lens,mm,distance,low,high,kind\nVelde M1,4711,Orrin 85 f/1.8,85,4.25,1,8,by hand\n');
    const plan = planTable(library, rows, T0);
    expect([plan.newKit, plan.library.kit]).toEqual([[], library.kit]);
    expect(plan.library.byHand[0]).toMatchObject({
      subject: { situation: 's', body: 'The old one' },
      source: 'by hand',
      finding: { low: 1, high: 8, chosen: 4 },
    });
  });

  it('reports every fault with its line, and takes the lines that are well', () => {
    const { rows, faults } = read(
      'body,lens,mm,distance (mm),value,date\n' +
        'Velde M1,Orrin 85,85,4250,6,2026-03-04\n' +
        'Velde M1,"Orrin\n35",35,1750,six,2026-03-04\n' +
        'Velde M1,Orrin 35,35,1750,6,03/04/2026\n' +
        'Velde M1,,35,1750,6,2026-03-04\n' +
        'Velde M1,Orrin 35,35,"1,750",6,2026-03-04\n',
    );
    expect(rows).toHaveLength(1);
    expect(faults).toEqual([
      { line: 3, column: 'value', fault: { is: 'no number', cell: 'six' } },
      { line: 5, column: 'at', fault: { is: 'no date', cell: '03/04/2026' } },
      { line: 6, column: 'lens', fault: { is: 'empty' } },
      { line: 7, column: 'distance', fault: { is: 'two numbers', cell: '1,750', thousands: '1750', decimal: '1.750' } },
    ]);
    expect(faults.map((fault) => words('files').table.line(fault, fault.column === 'distance' ? 'mm away' : fault.column))).toEqual([
      'Line 3, value: “six” is not a number.',
      'Line 5, date (“at”): “03/04/2026” is not a date. Write it as year-month-day, such as 2026-03-04.',
      'Line 6, lens: It is empty. Every line needs it.',
      'Line 7, distance (“mm away”): “1,750” can be read in two ways. Write 1750 or 1.750.',
    ]);
  });

  it.each(['\uFEFF', ' ', '\t', "'\t", '\u00A0'])('takes a name or a serial of blanks, %j, for none', (blank) => {
    const line = `by hand,2026-01-01T10:00:00Z,Velde M1,"${blank}",Orrin 85 f/1.8,"${blank}",85,4250,value,,5`;
    const { rows, faults } = read(`kind,date,body,body serial,lens,lens serial,focal length (mm),distance (mm),found,low,value\r\n${line}\r\n`);
    expect([faults, rows[0]?.row.bodySerial, rows[0]?.row.lensSerial]).toEqual([[], null, null]);
    expect(v.is(Library, planTable(EMPTY_LIBRARY, { rows, faults }, T0).library)).toBe(true);
  });

  it('says which needed columns no heading stands for', () => {
    expect(missingFrom(guessMapping(['lens', 'correction', 'whatever'])).map(({ heading }) => heading)).toEqual(['body', 'focal length (mm)', 'distance (mm)']);
  });

  it('refuses an empty table and a quote that never closes', () => {
    expect(readTable('')).toEqual({ ok: false, fault: { is: 'empty' } });
    expect(readTable('a,b\r\n1,"2\r\n')).toEqual({ ok: false, fault: { is: 'open quote', line: 2 } });
  });

  it.each([
    ['after the quote that closes', 'a,b\r\n"1\r\n2"3,4\r\n', 3],
    ['in a field without quotes', 'sep=;\na;b\n1;2\n1;6" rail\n', 4],
    ['at the end of one', 'a,b\r\nVelde M1",Orrin 85\r\n', 2],
  ])('tells the line of a quote that is astray %s', (_where, text, line) => {
    expect(readTable(text)).toEqual({ ok: false, fault: { is: 'stray quote', line } });
    const said = words('files').table.fault({ is: 'stray quote', line });
    expect(said).toBe(`Line ${line}: a quotation mark stands in the middle of a field. Remove it, then choose the file again.`);
  });

  it.each([';', ',', '\t', '|'])('obeys a first line that names the separator %j, and counts it as a line', (mark) => {
    for (const end of ['\r\n', '\n', '\r']) {
      const lines = [`sep=${mark}`, ['body', 'lens', 'a;b,c'].join(mark === ';' || mark === ',' ? '\t' : mark), ['1', '"2, 3; 4|5"'].join(mark), ''];
      const table = readTable(`\uFEFF${lines.join(end)}`);
      expect(table.ok && table.value.lines).toEqual([{ line: 3, cells: ['1', '2, 3; 4|5'] }]);
    }
  });

  it('takes commas for decimals where semicolons part the fields, and asks about a point that could part thousands', () => {
    const headings = 'body;lens;mm;distance (mm);value;temperature\n';
    const { rows, faults } = read(
      `sep=;\n${headings}Velde M1;Orrin 85;85;1,750;-3;20,5\nVelde M1;Orrin 85;85;1.750;-3;20.5\nVelde M1;Orrin 85;85;4250;-3;20.5\n`,
    );
    expect(rows.map(({ line, row }) => [line, row.distance, row.temperature])).toEqual([
      [3, 1.75, 20.5],
      [5, 4250, 20.5],
    ]);
    expect(faults).toEqual([{ line: 4, column: 'distance', fault: { is: 'two numbers', cell: '1.750', thousands: '1750', decimal: '1,750' } }]);
  });

  it.each([
    ['de', WITH_SEMICOLONS],
    ['fr-CA', WITH_SEMICOLONS],
    ['es-ES', WITH_SEMICOLONS],
    ['de-CH', WITH_COMMAS],
    ['es-MX', WITH_COMMAS],
    ['ja', WITH_COMMAS],
    ['en-GB', WITH_COMMAS],
    ['en-US@posix', WITH_COMMAS],
    [undefined, WITH_COMMAS],
  ])('is written for the language %s as its spreadsheets expect it', (language, expected) => {
    expect(styleFor(language)).toEqual(expected);
  });

  it('of a language with decimal commas has semicolons between the fields and no quotes around a number', () => {
    const table = writeTable(libraryWith({ records: [sweepRecord('r', T0, 2, 9)] }), WITH_SEMICOLONS);
    const [headings = '', line = ''] = table.split('\r\n');
    expect(headings).toMatch(/^\uFEFFkind;date;body;/);
    const within = line.split(';')[headings.split(';').indexOf('within one step')];
    expect(within).toMatch(/^\d,\d+$/);
  });
});

describe('fields', () => {
  it('of any text come back as they were', () => {
    const comesBack = (text: string) => expect(readCellText(writeText(text))).toBe(text);
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => void comesBack(text)),
      { numRuns: 500 },
    );
    const starts = fc.constantFrom('=', '+', '-', '@', "'", "'=", "''+", '\t', '\r', ' =', '\uFF1D');
    fc.assert(fc.property(starts, fc.string(), (start, rest) => void comesBack(start + rest)));
  });

  it('of any kind, on any number of lines, come back as they were', () => {
    const cell = fc.oneof(fc.string(), fc.constantFrom('"', ',', '\r\n', '\n', ' ', '', '""', ';', '\t', 'sep=', 'sep=;'));
    const mark = fc.constantFrom<Delimiter>(',', ';', '\t', '|');
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 5 }), mark, (lines, delimiter) => {
        const back = readCsv(writeCsv(lines, delimiter), delimiter);
        expect(back.ok && back.value.map((line) => line.cells)).toEqual(lines);
      }),
      { numRuns: 1000 },
    );
  });

  it('of numbers are read with a point or a comma and either minus, and refused where they could be two', () => {
    for (const [cell, value] of [
      ['4.25', 4.25],
      ['4,25', 4.25],
      ['−3', -3],
      ['+6', 6],
      ["'-3", -3],
      ['0,125', 0.125],
      ['1e3', 1000],
    ] as const) {
      expect(readCellNumber(cell)).toEqual({ ok: true, value });
    }
    for (const cell of ['1,234', '1,234,567', '', '-', '1.2.3', '0x10', 'Infinity', 'NaN', '1e999']) {
      expect(readCellNumber(cell)).toMatchObject({ ok: false });
    }
  });

  it('in quotes may have blanks around them, which are none of the field', () => {
    const read = readCsv('a,"b" ,c\r\n "d, e"\t,f , g\r\n');
    expect(read.ok && read.value.map(({ cells }) => cells)).toEqual([
      ['a', 'b', 'c'],
      ['d, e', 'f ', ' g'],
    ]);
  });

  it('of any number come back as they were, in either style', () => {
    const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0);
    fc.assert(
      fc.property(number, (value) => {
        expect(readCellNumber(writeCellNumber(value, ','), ',')).toEqual({ ok: true, value });
        expect(readCellNumber(writeCellNumber(value, '.'))).toEqual({ ok: true, value });
      }),
      { numRuns: 1000 },
    );
  });

  it('of rows are written with their headings first and lines ending in CRLF', () => {
    expect(writeRows([], WITH_COMMAS)).toMatch(/^kind,date,body,.*,id\r\n$/);
  });
});

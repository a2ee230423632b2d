// RFC 4180 (Y. Shafranovich, October 2005), section 2, 'Definition of the CSV Format': its own examples, in its order,
// with CRLF written out.
import { describe, expect, it } from 'vitest';
import { readCsv, writeCsv } from '../../src/logbook/csv/csv.ts';

const EXAMPLES: readonly [string, string, readonly (readonly string[])[]][] = [
  [
    '1: each record on a line of its own',
    'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '2: no line break after the last',
    'aaa,bbb,ccc\r\nzzz,yyy,xxx',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '3: a header line',
    'field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
    [
      ['field_name', 'field_name', 'field_name'],
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  ['4: one line', 'aaa,bbb,ccc', [['aaa', 'bbb', 'ccc']]],
  [
    '5: fields in quotes',
    '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '6: a line break inside a field',
    '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
    [
      ['aaa', 'b\r\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  ['7: a quote inside a field', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
];

describe('RFC 4180, section 2', () => {
  it.each(EXAMPLES)('example %s is read as it says', (_title, text, cells) => {
    const read = readCsv(text);
    expect(read.ok && read.value.map((line) => line.cells)).toEqual(cells);
  });

  it.each(EXAMPLES)('example %s is read the same after it was written here', (_title, _text, cells) => {
    const read = readCsv(writeCsv(cells));
    expect(read.ok && read.value.map((line) => line.cells)).toEqual(cells);
  });

  it('keeps spaces, which "are considered part of a field and should not be ignored" (rule 4)', () => {
    const read = readCsv(' a , b\r\n');
    expect(read.ok && read.value[0]?.cells).toEqual([' a ', ' b']);
  });
});

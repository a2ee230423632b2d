// Lines of fields as they are parted, quoted and refused, kept for texts that are written out and for seeded ones.
import { expect, test } from 'vitest';
import { readCsv, writeCsv } from '../../../src/logbook/csv/csv.ts';
import { delimiterOf } from '../../../src/logbook/csv/delimiter.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { oneLine } from '../../kept/oneLine.ts';

const DELIMITERS = [',', ';', '\t', '|'] as const;

test('lines of fields, and where a quote is astray', () => {
  const texts = [
    '',
    'a',
    'a,b',
    'a,',
    ',',
    ',\n',
    '\n\na',
    'a\r\nb',
    'a\rb',
    'a\n\n\nb',
    '"a"',
    '"a,b",c',
    '"a""b"',
    '"a',
    'a"b',
    '"a"b',
    ' "a" ,b',
    '\t"a"\t,b',
    ' a ,b',
    '"a\nb\r\nc",d\ne,"f',
    '"a\nb"\nc"d',
    '\ufeffa,b',
    'sep=;\na;b',
    'sep=;\r\na;b\n"c',
    'sep=;',
    'sep=,\n',
    '\ufeffsep=|\na|b',
    'Sep=x\na',
    'a;b\n1,5;2',
    'a\tb,c\t\n1',
    '"a;b;c",d',
    'a;b,c',
    'a;b,c;d',
    '""',
    '"",""',
    '"a"\n',
    'a,"b"',
  ];
  expect(texts.map((text) => oneLine([text, delimiterOf(text), readCsv(text)]))).toMatchSnapshot('read');
  expect(DELIMITERS.map((delimiter) => oneLine(['a\t"b"', ' "a"|b', '\t"a"\tb', 'a;b|c'].map((text) => readCsv(text, delimiter))))).toMatchSnapshot('parted');
  const fields = [['a', 'b c', ' d', 'e '], ['f"g', 'h\ni', 'sep=x', ''], ['j,k', 'l;m', 'n\to', 'p|q'], ['']];
  expect(DELIMITERS.map((delimiter) => writeCsv(fields, delimiter))).toMatchSnapshot('written');
});

test('seeded texts of marks and quotes', () => {
  const random = seededRandom(6);
  const signs = ['a', '"', '"', ',', ';', '\n', '\r\n', ' ', '\t'];
  const texts = Array.from({ length: 250 }, () =>
    Array.from({ length: 1 + Math.floor(random() * 9) }, () => signs[Math.floor(random() * signs.length)]).join(''),
  );
  const told = texts.map((text) => {
    const read = readCsv(text, ',');
    return read.ok
      ? read.value.map(({ line, cells }) => `${line}:${cells.map((cell) => cell.length).join('.')}`).join(' ')
      : `${read.fault.is === 'empty' ? '' : read.fault.is.slice(0, 1)}${'line' in read.fault ? read.fault.line : ''}`;
  });
  expect(told.join(' / ')).toMatchSnapshot();
});

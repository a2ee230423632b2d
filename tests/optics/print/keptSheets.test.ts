// How a drawing is cut to paper and written as SVG, and words are broken, kept as they are, round each bound.
import { expect, test } from 'vitest';
import { rectangle, type Drawing } from '../../../src/optics/print/drawing.ts';
import { sheetCount, sheets, windows, type Sheet } from '../../../src/optics/print/sheets.ts';
import { pageToSvg, shapeToSvg, windowToSvg } from '../../../src/optics/print/svg.ts';
import { lettersIn, wrapWords } from '../../../src/optics/print/wrapWords.ts';
import { millimetres as mm } from '../../../src/units.ts';
import { oneLine } from '../../kept/oneLine.ts';

type SheetAt = Pick<Sheet, 'number' | 'of' | 'row' | 'column'>;

const drawing = (width: number, height: number): Drawing => ({ width: mm(width), height: mm(height), shapes: [rectangle(1, 2, 3.00049, 4.0006)] });

test('the windows along one side', () => {
  expect([1, 99, 100, 101, 189, 190, 191, 280, 281, 1000].map((length) => oneLine(windows(length, 100)))).toMatchSnapshot('windows');
  const sizes = [
    [194, 281],
    [195, 281],
    [194, 282],
    [199.9, 263.4],
    [200, 264],
    [378, 552],
    [379, 553],
    [900, 700],
  ] as const;
  expect(sizes.map(([width, height]) => oneLine((['A4', 'Letter'] as const).map((paper) => sheetCount(drawing(width, height), paper))))).toMatchSnapshot(
    'sheet count',
  );
});

test.each(['A4', 'Letter'] as const)('the sheets of %s', (paper) => {
  const labels = { title: ({ number, of }: SheetAt) => `${number}/${of}`, foot: ({ row, column }: SheetAt) => `${row}, ${column}` };
  const cut = [...sheets(drawing(150, 180), paper, labels), ...sheets(drawing(500, 700), paper, labels)];
  expect(cut.map(({ svg, ...place }) => `${oneLine(place)} ${svg.match(/<(rect|text|svg)/g)?.length}`)).toMatchSnapshot('places');
  expect(cut.filter(({ number }) => number === 1 || number === 5).map(({ svg }) => svg)).toMatchSnapshot('pages');
});

test('shapes and pages as SVG, to the micrometre', () => {
  expect(
    shapeToSvg({
      kind: 'polygon',
      corners: [
        { x: 1.00049, y: -2 },
        { x: 3.0005001, y: 4 },
      ],
      ink: 'white',
    }),
  ).toMatchSnapshot('shape to svg');
  expect(shapeToSvg({ kind: 'disc', middle: { x: 1, y: 2 }, radius: 3, ink: 'black' })).toMatchSnapshot('shape to svg 2');
  expect(shapeToSvg({ kind: 'text', at: { x: 1, y: 2 }, size: 3, text: '<a "b" & \'c\'>\u0000\ud800', from: 'middle' })).toMatchSnapshot('shape to svg 3');
  expect(windowToSvg(drawing(9, 9), { x: 1, y: 2 }, { x: 3, y: 4 }, 5, 6)).toMatchSnapshot('window to svg');
  expect(pageToSvg(210, 297, 'a < b', '<g/>')).toMatchSnapshot('page to svg');
});

test('words broken into lines', () => {
  const words = [
    '',
    'a',
    'abcd',
    'abcde',
    'abcd efgh',
    'ab cd ef gh',
    'abcdefghijklmnop',
    'ab abcdefghijkl cd',
    '  ab  cd ',
    '日本語の文字です。',
    'カメラとレンズ（85mm）',
    'ab日cd',
    '「日」、本',
  ];
  const widths = [1, 4, 5, 8.8, 8.9, 20];
  expect(words.map((each) => oneLine([lettersIn(each), ...widths.map((width) => wrapWords(each, 2, width).join('|'))]))).toMatchSnapshot();
});

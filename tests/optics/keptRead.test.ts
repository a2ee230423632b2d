// Numbers and lengths read out of texts at the bench, kept over every form and round each bound.
import { expect, test } from 'vitest';
import * as v from 'valibot';
import { readDistance, readFocalLength } from '../../src/optics/length.ts';
import { readLikely, readWithin } from '../../src/optics/meantNumber.ts';
import { readCount, readNumber } from '../../src/optics/quantity.ts';
import { inUnit, lengthsIn } from '../../src/optics/writtenLength.ts';
import { halfWidth, numbersIn, signed, thousandsPointed } from '../../src/optics/writtenNumber.ts';
import { oneLine } from '../kept/oneLine.ts';

const NUMBERS = [
  '',
  '7',
  '-7',
  '+7',
  '007',
  '1,5',
  '1.5',
  '.5',
  ',5',
  '5.',
  '5,',
  '1,250',
  '1.250',
  '0,125',
  '1,250,000',
  '1.250.000',
  '1,250.5',
  '1.250,5',
  '1 250',
  '1 250,5',
  '12 50',
  '−4',
  'ー4',
  '１２',
  '1,2,3',
  'x',
  '1x',
  '--1',
  '-1,250',
  '-1.250',
];
const LENGTHS = [
  '4.25 m',
  '4,25',
  '175 cm',
  '1,750 mm',
  '1,750',
  '1.750',
  '5.74 ft',
  '5 ft 9 in',
  `5' 9"`,
  '1 m 75',
  '12 cm 5',
  '3 in 4',
  '3 in 4 mm',
  '3 mm 4',
  '1 m 2 m',
  '1 ft 2 m',
  '5 9',
  '5 ft 9',
  '2 000 mm',
  '0.08',
  '0.085',
  '85',
  '85mm',
  '8.5 cm',
  '1',
  '1.9',
  '2',
  '3',
  '0',
  '3.9',
  '4',
  '2000',
  '2001',
  '49 mm',
  '50 mm',
  '500 m',
  '501 m',
  '５ m',
  '-3 m',
  'm',
  '',
  '1,250 m',
  '2,000 ft',
  '1/2 m',
];

test('numbers, counts and signs', () => {
  expect(
    NUMBERS.map((text) => oneLine([text, readNumber(text), readCount(text), numbersIn(text), thousandsPointed(text), signed(text), halfWidth(text)])),
  ).toMatchSnapshot();
});

test('a number in a range, one that a doubt is settled by, and one that could be two', () => {
  const range = v.pipe(v.number('no light value'), v.minValue(-10, 'no light value'), v.maxValue(2000, 'no light value'));
  const large = v.pipe(v.number('no width of a photograph'), v.minValue(500, 'no width of a photograph'));
  expect(
    ['1.250', '-1.250', '1,250', '1.25', '499', '500', '1,250,000'].map((text) =>
      oneLine([text, readWithin(large, text), readLikely(large, text, { is: 'no spot' })]),
    ),
  ).toMatchSnapshot('read within');
  const small = v.pipe(v.number('no pixels'), v.maxValue(100, 'no pixels'));
  expect(
    NUMBERS.map((text) =>
      oneLine([text, readWithin(range, text), readWithin(small, text), readLikely(range, text, { is: 'no spot' }), readLikely(small, text, { is: 'no spot' })]),
    ),
  ).toMatchSnapshot('read likely');
});

test('lengths in every unit', () => {
  const flat = (text: string, unit: 'm' | 'mm' | 'in') =>
    lengthsIn(text, unit).map(({ millimetres, unit: in_, value, parts }) => [in_, value, millimetres, parts.length].map(String).join(' '));
  expect(LENGTHS.map((text) => oneLine([text, flat(text, 'm'), flat(text, 'mm'), flat(text, 'in')]))).toMatchSnapshot('lengths');
  expect(oneLine((['mm', 'cm', 'm', 'in', 'ft'] as const).map((unit) => inUnit(1234, unit)))).toMatchSnapshot('in unit');
});

test('distances and focal lengths', () => {
  expect(LENGTHS.map((text) => oneLine([text, readDistance(text, 'm'), readDistance(text, 'ft'), readFocalLength(text)]))).toMatchSnapshot();
});

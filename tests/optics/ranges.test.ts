// Contract of ranges that a form takes, at their very ends, and of a number that means none of its range.
import { expect, test } from 'vitest';
import * as v from 'valibot';
import { ConverterFactor } from '../../src/optics/converter.ts';
import { LightThresholds } from '../../src/optics/light.ts';
import { readWithin } from '../../src/optics/meantNumber.ts';

test('a converter has a factor of 1 to 3', () => {
  expect([0.99, 1, 1.5, 3, 3.5].map((factor) => v.is(ConverterFactor, factor))).toEqual([false, true, true, true, false]);
});

test('plenty of light is more than fine', () => {
  expect([6, 7, 8].map((plenty) => v.is(LightThresholds, { fine: 7, plenty }))).toEqual([false, false, true]);
});

test('a text that could be two numbers, neither of them in the range, is none of the range', () => {
  const range = v.pipe(v.number('no share'), v.maxValue(1, 'no share'));
  expect(readWithin(range, '1,250')).toEqual({ ok: false, fault: { is: 'no share' } });
});

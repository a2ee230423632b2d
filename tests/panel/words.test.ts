// Contract of what is written and what is typed: quantities as a photographer writes them, numbers as anybody types them.
import { describe, expect, test } from 'vitest';
import { distanceTyped } from '../../src/panel/words/distanceTyped.ts';
import { typedNumber } from '../../src/panel/words/typedNumber.ts';
import { stepped, typedValue } from '../../src/panel/sweep/typedValue.ts';
import { USUAL_SCALE, type Scale } from '../../src/sweep/scale.ts';
import { millimetres, steps } from '../../src/units.ts';
import { words } from '../../src/words/catalogue.ts';

const COARSE: Scale = { min: steps(-40), max: steps(40), step: 5 };

test.each([
  [1750, '1.75'],
  [4250, '4.25'],
  [10_000, '10'],
  [12_340, '12.3'],
] as const)('%d mm stand in a field for metres as %s', (length, written) => {
  expect(distanceTyped(millimetres(length))).toBe(written);
});

describe('numbers that are typed', () => {
  test.each([
    ['4.25', 4.25],
    ['4,25', 4.25],
    [' +7 ', 7],
    ['-7', -7],
    ['\u22127', -7],
    ['.5', 0.5],
  ] as const)('%s is a number', (typed, value) => {
    expect(typedNumber(typed)).toBe(value);
  });

  test.each(['', 'seven', '1e3', '4.2.5', '--7', 'Infinity'])('"%s" is none', (typed) => {
    expect(typedNumber(typed)).toBeNaN();
  });

  test('a value must be on the scale of the body, and what is none says which are', () => {
    const sentence = (scale: Scale, text: string) => {
      const typed = typedValue(scale, text);
      return typed.ok ? null : words('sweep').setValue.offTheScale(typed.fault);
    };
    expect(typedValue(USUAL_SCALE, '-7')).toEqual({ ok: true, value: -7 });
    expect(sentence(USUAL_SCALE, '2.5')).toBe('Enter a whole number from \u221220 to +20.');
    expect(sentence(COARSE, '7')).toBe('Enter a value in steps of 5 from \u221240 to +40.');
  });

  test('stepping keeps to the scale, stops at its limits, and starts at zero from nonsense', () => {
    expect([stepped(USUAL_SCALE, '-1', 1), stepped(USUAL_SCALE, '20', 1), stepped(COARSE, '7', 1), stepped(COARSE, 'x', -1)]).toEqual(['0', '+20', '+10', '0']);
  });
});

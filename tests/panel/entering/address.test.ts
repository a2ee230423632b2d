// Contract of the page's address: whatever was asked for on the screen is what the page shows.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readAsked, writeAsked } from '../../../src/panel/entering/address.ts';

const id = fc.string({ minLength: 1, unit: 'binary' }).filter((text) => !/[\n\r\u2028\u2029]/.test(text));
const weight = fc.integer({ min: 0, max: 1000 }).map((tenths) => tenths / 10);

test('a situation and its weights come back as they were written', () => {
  const asked = fc.record({
    situation: id,
    weighing: fc.oneof(
      fc.constant({ by: 'worst share' } as const),
      fc.array(fc.tuple(id, weight)).map((all) => ({ by: 'use', use: new Map(all) }) as const),
    ),
  });
  fc.assert(fc.property(asked, (one) => void expect(readAsked(`#${writeAsked(one)}`)).toEqual(one)));
});

test('a weight that does not read counts as one never typed', () => {
  expect(readAsked('#of=a&by=use&use=much+b&use=2+c')).toEqual({ situation: 'a', weighing: { by: 'use', use: new Map([['c', 2]]) } });
});

// Contract of the small fields of kit: how long an id, a name and an engraving may be, blanks at their ends not counted.
import { expect, test } from 'vitest';
import * as v from 'valibot';
import { Engraved, Id, Name } from '../../src/kit/words.ts';

test('an id has 1 to 100 signs', () => {
  expect([0, 1, 2, 100, 101].map((signs) => v.is(Id, 'x'.repeat(signs)))).toEqual([false, true, true, true, false]);
});

test('a name has 1 to 60 signs', () => {
  expect([0, 1, 2, 60, 61].map((signs) => v.is(Name, ` ${'x'.repeat(signs)} `))).toEqual([false, true, true, true, false]);
});

test('an engraving has 1 to 60 signs, or nobody has looked', () => {
  expect([0, 1, 2, 60, 61].map((signs) => v.is(Engraved, ` ${'x'.repeat(signs)} `))).toEqual([false, true, true, true, false]);
  expect(v.is(Engraved, null)).toBe(true);
});

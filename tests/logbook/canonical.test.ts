// Contract of comparing contents: two are the same exactly where their canonical texts are.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonical, isSame } from '../../src/logbook/canonical.ts';

const json = fc.jsonValue({ maxDepth: 3 });

test('two contents are the same exactly where they have one text', () => {
  fc.assert(
    fc.property(json, json, (one, other) => {
      expect(isSame(one, other)).toBe(canonical(one) === canonical(other));
    }),
  );
});

test('the order of fields does not count, nor does a field that is undefined; the order of a list does', () => {
  const turned = (value: unknown): unknown =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(
          Object.entries(value)
            .map(([name, part]) => [name, turned(part)] as const)
            .toReversed(),
        )
      : value;
  fc.assert(
    fc.property(fc.dictionary(fc.string(), json), (content) => {
      expect(isSame({ ...content, gone: undefined }, turned(content))).toBe(true);
    }),
  );
  expect(isSame([1, 2], [2, 1])).toBe(false);
  expect(isSame([1, 2], [1, 2, 3])).toBe(false);
  expect(isSame({ a: 1 }, [1])).toBe(false);
  expect(isSame({ a: undefined }, { b: 1 })).toBe(false);
});

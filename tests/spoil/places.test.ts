import { expect, test } from 'vitest';
import { drawn } from './draw.ts';
import { placesIn, spoiled } from './places.ts';

const becomes = (text: string): string[] => placesIn('src/a.ts', text).map((place) => `${place.kind}: ${spoiled(text, place)}`);

test.each([
  ['a sign', 'x = a + b;', ['sign: x = a - b;']],
  ['a difference', 'x -= a;', ['sign: x += a;']],
  ['a minus before a name', 'x = -a;', ['sign: x = a;']],
  ['an edge', 'x = a < b;', ['edge: x = a <= b;']],
  ['an edge that was in', 'x = a >= b;', ['edge: x = a > b;']],
  ['a whole bound', 'x = a < 7;', ['edge: x = a <= 7;', 'bound: x = a < 8;']],
  ['a bound that is a fraction', 'x = Math.min(a, 0.25);', ['bound: x = Math.min(a, 0.5);', 'min and max: x = Math.max(a, 0.25);']],
  [
    'a whole bound that has a name',
    'const MOST = 7;\nx = a <= MOST;',
    ['edge: const MOST = 7;\nx = a < MOST;', 'bound: const MOST = 7;\nx = a <= (MOST + 1);'],
  ],
  ['a bound that another file gives', 'x = a <= MOST;', ['edge: x = a < MOST;', 'bound: x = a <= (2 * MOST);']],
  ['a bound of what is stored', 'x = v.minValue(0);', ['bound: x = v.minValue(1);']],
  ['an index', 'x = a[0];', ['off by one: x = a[1];']],
  ['the last of a slice', 'x = a.slice(1, b);', ['off by one: x = a.slice(2, b);']],
  ['from the end', 'x = a.at(-1);', ['sign: x = a.at(1);', 'off by one: x = a.at(-2);']],
  ['one more', 'x = a + 1;', ['sign: x = a - 1;', 'off by one: x = a + 2;']],
  ['either side of `and`', 'x = a && b;', ['condition: x = a;', 'condition: x = b;']],
  ['a side that would fall apart', 'x = !(a || b === c);', ['condition: x = (a || b === c);', 'condition: x = !(a);', 'condition: x = !((b === c));']],
  ['a guard', 'if (a) b();', ['condition: if (true) b();', 'condition: if (false) b();']],
  ['a choice', 'x = a ? b : c;', ['condition: x = b;', 'condition: x = c;']],
])('%s', (_, text, spoilt) => {
  expect(becomes(text)).toEqual(spoilt);
});

test('a loop begins one later and may take its end in; its stride is left, and so is what is only a type', () => {
  expect(becomes('for (let i = 0; i < n; i += 1) f(i);')).toEqual([
    'off by one: for (let i = 1; i < n; i += 1) f(i);',
    'edge: for (let i = 0; i <= n; i += 1) f(i);',
  ]);
  expect(becomes('type A = B extends -1 ? [0][0] : C; interface D { e: -1 }')).toEqual([]);
});

test('a place says its line and what stands there', () => {
  expect(placesIn('src/a.ts', '\n\nx = Math.max(a, b);')).toMatchObject([{ file: 'src/a.ts', line: 3, before: 'max', after: 'min' }]);
});

test('one seed draws one order of all there is; another seed another', () => {
  const items = Array.from({ length: 20 }, (_, at) => at);
  expect(drawn(7, items)).toEqual(drawn(7, items));
  expect(drawn(7, items)).not.toEqual(drawn(8, items));
  expect(drawn(7, items).sort((a, b) => a - b)).toEqual(items);
});

test('each is as likely as any other to come first', () => {
  const firsts = Array.from({ length: 3000 }, (_, seed) => drawn(seed, ['a', 'b', 'c'])[0]);
  // A third of 3,000 is 1,000, give or take 26; four times that is 104.
  for (const each of ['a', 'b', 'c']) expect(Math.abs(firsts.filter((first) => first === each).length - 1000)).toBeLessThan(104);
});

// Contract of the panel's and the pages' rules: they say start and end, never left and right, so that a language that is written from right to
// left finds every side turned round. What is truly left or right, such as a scale, is drawn, and every drawing keeps its sides (ground.css).
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Declarations of one file as `property: value`, without comments. */
const declarationsIn = (css: string): string[] =>
  [...css.replaceAll(/\/\*.*?\*\//gsu, '').matchAll(/([-a-z]+)\s*:\s*([^:;{}]+);/gu)].map(([, property = '', value = '']) => `${property}: ${value.trim()}`);

/** Parts at the top of a value: those of `calc(1px + 2px) 0` are two. */
function partsOf(value: string): string[] {
  const parts = [''];
  let depth = 0;
  for (const letter of value) {
    depth += letter === '(' ? 1 : letter === ')' ? -1 : 0;
    if (depth === 0 && /\s/u.test(letter)) parts.push('');
    else parts[parts.length - 1] += letter;
  }
  return parts.filter((part) => part !== '');
}

/** Four sides of which left is not as right, and corners likewise. */
function isLopsided(declaration: string): boolean {
  const [property = '', value = ''] = declaration.split(': ');
  const [first, second, third = first, fourth = second] = partsOf(value);
  if (/^(margin|padding|inset|border-(width|style|color))$/u.test(property)) return second !== fourth;
  return property === 'border-radius' && second !== undefined && (first !== second || third !== fourth);
}

const namesASide = (declaration: string): boolean => /(^|[-\s(])(left|right)\b/u.test(declaration);

const sides = (css: string): string[] => declarationsIn(css).filter((one) => namesASide(one) || isLopsided(one));

test('no rule names left or right', () => {
  const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).flatMap((name) => (name.endsWith('.css') ? [`src/${name}`] : []));
  expect(files.length).toBeGreaterThan(30);
  expect(files.flatMap((file) => sides(readFileSync(file, 'utf8')).map((one) => `${file}: ${one}`))).toEqual([]);
});

test('a side is found in a property, in a keyword and in four values', () => {
  const css = 'a { margin-left: 1px; float: right; padding: 0 1px 0 2px; inset: 0 0 auto; border-radius: 0 0 9px 9px; /* left: 0; */ }';
  expect(sides(css)).toEqual(['margin-left: 1px', 'float: right', 'padding: 0 1px 0 2px']);
  expect(sides('b { border-radius: 0 9px 9px 0; margin: 0 calc(1px + 2px); translate: 0 0; }')).toEqual(['border-radius: 0 9px 9px 0']);
});

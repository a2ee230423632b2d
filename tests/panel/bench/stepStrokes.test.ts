// Contract of the small drawings of the walk: each stays within its box, and shows what the hand does or what is touched.
import { expect, test } from 'vitest';
import { STEP_STROKES } from '../../../src/panel/bench/stepStrokes.ts';

/** Where each stroke of a path ends, and the tops of its full circles. */
function endsOf(d: string): { x: number; y: number }[] {
  const ends: { x: number; y: number }[] = [];
  let at = { x: 0, y: 0 };
  let start = at;
  for (const [, command = '', rest = ''] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const numbers = (rest.match(/-?(?:\d*\.\d+|\d+)/g) ?? []).map(Number);
    const own = command === command.toLowerCase();
    const takes = { m: 2, l: 2, h: 1, v: 1, c: 6, a: 7, z: 0 }[command.toLowerCase()];
    if (takes === undefined) throw new Error(`No such stroke: ${command}`);
    if (takes === 0) at = start;
    else if (numbers.length === 0 || numbers.length % takes !== 0) throw new Error(`Not whole: ${command}${rest}`);
    for (let index = 0; index < numbers.length; index += Math.max(1, takes)) {
      const of = numbers.slice(index, index + takes);
      const from = own ? at : { x: 0, y: 0 };
      const kind = command.toLowerCase();
      if (kind === 'a') for (const side of [-1, 1]) ends.push({ x: at.x + (of[5] ?? 0) / 2, y: at.y + (side * Math.abs(of[5] ?? 0)) / 2 });
      if (kind === 'h') at = { x: from.x + (of[0] ?? 0), y: at.y };
      else if (kind === 'v') at = { x: at.x, y: from.y + (of[0] ?? 0) };
      else at = { x: from.x + (of.at(-2) ?? 0), y: from.y + (of.at(-1) ?? 0) };
      if (kind === 'm' && index === 0) start = at;
      ends.push(at);
    }
  }
  return ends;
}

test.each(Object.entries(STEP_STROKES))('%s lies within 96 by 64', (_, strokes) => {
  const ends = strokes.flatMap(([, d]) => endsOf(d));
  expect(ends.length).toBeGreaterThan(8);
  expect(ends.filter(({ x, y }) => x < 1 || x > 95 || y < 1 || y > 63)).toEqual([]);
  expect(strokes.some(([part]) => part === 'act' || part === 'full')).toBe(true);
  // One path a part: they are told apart by it.
  expect(new Set(strokes.map(([part]) => part)).size).toBe(strokes.length);
});

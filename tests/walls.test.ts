import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { architectureOf } from './walls/architecture.ts';
import { drawingOf } from './walls/drawing.ts';
import { fileCircles, idleArrows, roomCircles, wrongArrows, type Rooms } from './walls/faults.ts';
import { importsOf } from './walls/imports.ts';
import { ROOMS } from './walls/rooms.ts';

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((path) => `src/${path.replaceAll('\\', '/')}`)
  .filter((path) => /\.tsx?$/.test(path));
const imports = sources.flatMap((path) => importsOf(path, readFileSync(path, 'utf8')));

describe('the walls of the program', () => {
  test('no room knows another that the table does not allow it, not even for a type', () => {
    expect(wrongArrows(ROOMS, sources, imports)).toEqual([]);
  });

  test('no two rooms know each other, by whatever way round', () => {
    expect(roomCircles(ROOMS)).toEqual([]);
  });

  test('no two files know each other, by whatever way round, not even for a type', () => {
    expect(fileCircles(imports)).toEqual([]);
  });

  test('every arrow of the table is in use', () => {
    expect(idleArrows(ROOMS, imports)).toEqual([]);
  });

  test('DEVELOPERS.md draws the table as it is', () => {
    const [, drawn] = /^(\| room \|.*?)\n\n/ms.exec(readFileSync('DEVELOPERS.md', 'utf8')) ?? [];
    expect(drawn?.split('\n')).toEqual(drawingOf(ROOMS).split('\n'));
  });

  test('docs/architecture.md draws the rooms and the nearest that each knows', () => {
    const [drawn] = /^```mermaid$.*?^```$/ms.exec(readFileSync('docs/architecture.md', 'utf8')) ?? [];
    expect(drawn?.split('\n')).toEqual(architectureOf(ROOMS).split('\n'));
  });

  test('all of the program is looked at', () => {
    expect(sources.length).toBeGreaterThan(400);
    expect(imports.length).toBeGreaterThan(1500);
  });
});

describe('what the walls hold back', () => {
  const rooms: Rooms = {
    low: { holds: ['src/low', 'src/high/early.ts'], knows: [] },
    high: { holds: ['src/high'], knows: ['low'] },
  };
  const read = (files: Readonly<Record<string, string>>) => Object.entries(files).flatMap(([file, text]) => importsOf(file, text));

  test.each([
    ['a value', "import { b } from '../high/b.ts';"],
    ['a type alone', "import type { B } from '../high/b.ts';"],
    ['a type among values', "import { a, type B } from '../high/b.ts';"],
    ['for its effects', "import '../high/b.ts';"],
    ['what is handed on', "export * from '../high/b.ts';"],
    ['a type handed on', "export type { B } from '../high/b.ts';"],
    ['what is read on demand', "const b = async () => (await import('../high/b.ts')).b;"],
    ['what is read on demand, in back quotes', 'void import(`../high/b.ts`);'],
    ['the type of a module', "type B = import('../high/b.ts').B;"],
    ['the type of what a module holds', "let b: typeof import('../high/b.ts');"],
  ])('an arrow that points up is named with its file and line: %s', (_, text) => {
    const found = read({ 'src/low/a.ts': `// A comment that says import x from '../high/c.ts';\nconst said = "import('../high/c.ts')";\n${text}\n` });
    expect(wrongArrows(rooms, ['src/low/a.ts'], found)).toEqual(['src/low/a.ts:3: low may not know high (src/high/b.ts)']);
  });

  test('an arrow that the table allows, one within a room and one to a package pass', () => {
    const found = read({ 'src/high/a.ts': "import { a } from '../low/a.ts';\nimport { b } from './b.ts';\nimport * as v from 'valibot';\n" });
    expect(wrongArrows(rooms, ['src/high/a.ts'], found)).toEqual([]);
  });

  test('a file that is named by itself belongs to the room that names it', () => {
    const found = read({ 'src/high/early.ts': "import { b } from './b.ts';" });
    expect(wrongArrows(rooms, ['src/high/early.ts'], found)).toEqual(['src/high/early.ts:1: low may not know high (src/high/b.ts)']);
  });

  test('a file outside all rooms is named', () => {
    expect(wrongArrows(rooms, ['src/attic/a.ts'], [])).toEqual(['src/attic/a.ts: no room holds it']);
  });

  test('an import from outside all rooms is named', () => {
    const found = read({ 'src/high/a.ts': "import size from '../../package.json';" });
    expect(wrongArrows(rooms, [], found)).toEqual(['src/high/a.ts:1: high may not know what no room holds (package.json)']);
  });

  test('a circle of two files by types alone is named once, import by import', () => {
    const found = read({
      'src/low/a.ts': "import type { B } from './b.ts';",
      'src/low/b.ts': "\nimport type { A } from './a.ts';",
    });
    expect(fileCircles(found)).toEqual(['src/low/a.ts:1 \u2192 src/low/b.ts\n  src/low/b.ts:2 \u2192 src/low/a.ts']);
  });

  test('a longer circle is found from whatever leads to it, and a file that only leads to it is not in it', () => {
    const found = read({
      'src/low/start.tsx': "import { a } from './a.ts';\nexport const Start = () => <p>It's here</p>;",
      'src/low/a.ts': "import { b } from './b.ts';\nimport { end } from './end.ts';",
      'src/low/b.ts': "const c = import('./c.ts');",
      'src/low/c.ts': "export type { A } from './a.ts';",
    });
    expect(fileCircles(found)).toEqual(['src/low/a.ts:1 \u2192 src/low/b.ts\n  src/low/b.ts:1 \u2192 src/low/c.ts\n  src/low/c.ts:1 \u2192 src/low/a.ts']);
  });

  test('a file that imports itself is a circle', () => {
    expect(fileCircles(read({ 'src/low/a.ts': "import { a } from './a.ts';" }))).toEqual(['src/low/a.ts:1 \u2192 src/low/a.ts']);
  });

  test('a circle of rooms is named from the table', () => {
    const circle: Rooms = { ...rooms, low: { holds: ['src/low'], knows: ['high'] } };
    expect(roomCircles(circle)).toEqual(['low \u2192 high: it must stand above']);
  });

  test('the drawing leaves out an arrow that another way leads along', () => {
    const three: Rooms = { low: { holds: [], knows: [] }, middle: { holds: [], knows: ['low'] }, high: { holds: [], knows: ['low', 'middle'] } };
    expect(architectureOf(three)).toContain('high --> middle');
    expect(architectureOf(three)).not.toContain('high --> low');
  });

  test('an arrow that nothing uses is named', () => {
    expect(idleArrows(rooms, [])).toEqual(['high \u2192 low: nothing uses it; strike it from the table']);
  });
});

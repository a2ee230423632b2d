// Which unit tests may notice that a source is spoiled, the nearest and the quickest first.
import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { importsOf } from '../walls/imports.ts';

export interface Related {
  readonly test: string;
  /** 0 is the test of this very file, then how many imports lie between; within its own folder never more than two. */
  readonly distance: number;
}

/** What types alone lead to is left out: a type does nothing. */
export function importers(): Map<string, string[]> {
  const files = ['src', 'tests'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .map((path) => `${folder}/${path.replaceAll('\\', '/')}`)
      .filter((path) => /\.tsx?$/.test(path)),
  );
  const by = new Map<string, string[]>();
  for (const { file, of, how } of files.flatMap((path) => importsOf(path, readFileSync(path, 'utf8'))))
    if (how !== 'type') by.set(of, [...(by.get(of) ?? []), file]);
  return by;
}

export function relatedTo(source: string, importedBy: ReadonlyMap<string, readonly string[]>, took: (test: string) => number): Related[] {
  const weight = ({ test, distance }: Related): number => (0.1 + distance) * (1 + took(test));
  const reached = new Map([[source, 0]]);
  for (const file of reached.keys()) for (const next of importedBy.get(file) ?? []) if (!reached.has(next)) reached.set(next, (reached.get(file) ?? 0) + 1);
  return [...reached]
    .filter(([file]) => isUnitTest(file))
    .map(([test, imports]) => ({ test, distance: nearness(source, test, imports) }))
    .sort((a, b) => weight(a) - weight(b));
}

function nearness(source: string, test: string, imports: number): number {
  const mirror = source.replace(/^src/, 'tests').replace(/\.ts$/, '');
  if (test.replace(/\.test\.tsx?$/, '') === mirror) return 0;
  return posix.dirname(test) === posix.dirname(mirror) ? Math.min(imports, 2) : imports;
}

/** What a pure room promises, its own tests must hold it to: screens that happen to show it are not asked. */
const isUnitTest = (file: string): boolean => file.endsWith('.test.ts') && !/^tests\/(e2e|bench|play|spoil|panel|pages|background)\//.test(file);

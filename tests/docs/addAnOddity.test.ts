// Contract of docs/add-an-oddity.md: the compiler names every place that a new oddity is missing from, its steps are all of
// them, and the camera then does what the page says. The steps are taken on the sources in memory.
import { readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import { build } from 'esbuild';
import ts from 'typescript';
import { beforeAll, expect, test } from 'vitest';
import type { PracticeCamera } from '../../src/practice/camera.ts';
import type { oddPress } from '../../src/practice/oddCamera.ts';
import type { seededRandom } from '../../src/practice/random.ts';

interface Step {
  readonly file: string;
  readonly from: string;
  readonly to: string;
}

const page = readFileSync('docs/add-an-oddity.md', 'utf8');
const steps: readonly Step[] = [...page.matchAll(/^```diff (\S+)\n(.*?)^```$/gms)].map(([, file = '', block = '']) => {
  const lines = (sign: string): string =>
    block
      .split('\n')
      .filter((line) => line.startsWith(sign))
      .map((line) => line.slice(1))
      .join('\n');
  return { file, from: lines('-'), to: lines('+') };
});

/** The sources after so many steps, of those that change. */
function after(count: number): ReadonlyMap<string, string> {
  const changed = new Map<string, string>();
  for (const { file, from, to } of steps.slice(0, count)) {
    const text = changed.get(file) ?? readFileSync(file, 'utf8');
    if (text.split(`${from}\n`).length !== 2) throw new Error(`${file} has not exactly one line: ${from}`);
    changed.set(
      file,
      text.replace(`${from}\n`, () => `${to}\n`),
    );
  }
  return changed;
}

const FILES = [...new Set(steps.map(({ file }) => file))];

/** `file: what the compiler says`, of the files that the page changes. */
function faultsIn(changed: ReadonlyMap<string, string>): string[] {
  const read = ts.getParsedCommandLineOfConfigFile('tsconfig/browser.json', {}, { ...ts.sys, onUnRecoverableConfigFileDiagnostic: () => undefined });
  if (!read) throw new Error('The compiler’s options cannot be read.');
  const host = ts.createCompilerHost(read.options);
  const plain = host.getSourceFile.bind(host);
  host.getSourceFile = (name, ...rest) => {
    const text = changed.get(relative('.', name));
    return text === undefined ? plain(name, ...rest) : ts.createSourceFile(name, text, ts.ScriptTarget.ES2023, true);
  };
  const program = ts.createProgram(
    FILES.map((file) => resolve(file)),
    { ...read.options, incremental: false, noEmit: true },
    host,
  );
  return FILES.flatMap((file) => {
    const source = program.getSourceFile(resolve(file));
    return program
      .getSemanticDiagnostics(source)
      .map(({ messageText }) => `${file}: ${typeof messageText === 'string' ? messageText : messageText.messageText}`);
  });
}

interface Bundle {
  oddPress: typeof oddPress;
  seededRandom: typeof seededRandom;
}
let bundle: Bundle;

beforeAll(async () => {
  const changed = after(steps.length);
  const { outputFiles } = await build({
    stdin: { contents: "export * from './src/practice/oddCamera.ts'; export * from './src/practice/random.ts';", resolveDir: resolve('.') },
    bundle: true,
    format: 'esm',
    write: false,
    plugins: [
      {
        name: 'the sources after the last step',
        setup: ({ onLoad }) =>
          onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => {
            const contents = changed.get(relative('.', path));
            return contents === undefined ? undefined : { contents, loader: 'ts' };
          }),
      },
    ],
  });
  bundle = (await import(`data:text/javascript;base64,${Buffer.from(outputFiles[0]?.text ?? '').toString('base64')}`)) as Bundle;
});

test('with its name alone the compiler names the camera, the trouble, what it really was and its sentence', () => {
  const faults = faultsIn(after(1));
  for (const file of ['src/practice/oddCamera.ts', 'src/panel/outcome/revealed.ts', 'src/words/en/revealed.ts']) expect(faults.join('\n')).toContain(file);
  expect(faults.filter((fault) => fault.startsWith('src/panel/outcome/revealed.ts'))).toHaveLength(2);
});

test('after all steps the compiler finds nothing', () => {
  expect(faultsIn(after(steps.length))).toEqual([]);
});

test('the band of the new camera lies elsewhere late in a sweep', () => {
  const camera: PracticeCamera = { low: -2, high: 2, softLow: 0.1, softHigh: 0.1, lateUpTo: 1, darkFrom: 8, lapses: 0, arrows: 'absent' };
  const steadyAt = (value: number, nth: number): number =>
    Array.from({ length: 50 }, (_, seed) => bundle.oddPress(camera, 'band drifts' as never, value, nth, seed, bundle.seededRandom(seed))).filter(
      ({ light }) => light === 'steady',
    ).length;
  expect(steadyAt(0, 1)).toBeGreaterThan(40);
  expect(steadyAt(0, 24)).toBeLessThan(10);
  expect(steadyAt(6, 24)).toBeGreaterThan(40);
});

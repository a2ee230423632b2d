// Keeps what a page loads at once in one file. Left alone, esbuild puts every set of modules that the page shares with
// another set of its parts on demand into a file of its own: dozens of small ones. Here each part leans on the page's whole
// script, which is there long before, so that all the part shares with it stays together.
// Paths are relative to the project's folder: they go into the names of the files, which are the same wherever it lies.
import { relative, resolve } from 'node:path';
import type { Metafile, Plugin } from 'esbuild';

const PART = 'part on demand';

export const leaningOn = (script: string): Plugin => ({
  name: PART,
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^\./ }, ({ kind, path, resolveDir }) => {
      const part = relative('.', resolve(resolveDir, path));
      return kind === 'dynamic-import' ? { path: part, namespace: PART } : undefined;
    });
    onLoad({ filter: /./, namespace: PART }, ({ path }) => ({
      contents: `import ${JSON.stringify(`./${script}`)}; export * from ${JSON.stringify(`./${path}`)};`,
      resolveDir: resolve('.'),
    }));
  },
});

/** The source of a script that is a part on demand, such as `src/platform/ear/ear.ts`. */
export function partOf(output: Metafile['outputs'][string] | undefined): string | undefined {
  const [kind, source] = output?.entryPoint?.split(':') ?? [];
  return kind === PART ? source : undefined;
}

// Keeps what a page loads at once in one file. Left alone, esbuild puts every set of modules that the page shares with
// another set of its parts on demand into a file of its own: dozens of small ones. Here each part leans on the page's whole
// script, which is there long before, so that all the part shares with it stays together.
import { dirname, resolve } from 'node:path';
import type { Plugin } from 'esbuild';

const PART = 'part on demand';

export const leaningOn = (script: string): Plugin => ({
  name: PART,
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^\./ }, ({ kind, path, resolveDir }) =>
      kind === 'dynamic-import' ? { path: resolve(resolveDir, path), namespace: PART } : undefined,
    );
    onLoad({ filter: /./, namespace: PART }, ({ path }) => ({
      contents: `import ${JSON.stringify(resolve(script))}; export * from ${JSON.stringify(path)};`,
      resolveDir: dirname(path),
    }));
  },
});

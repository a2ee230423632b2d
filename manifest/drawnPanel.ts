// The panel's page before any script runs: the panel's own components and words, drawn by the build where marks stand for them.
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

export async function drawnPanel(page: string): Promise<string> {
  const outfile = resolve('node_modules/.cache/sweepbook/drawn.mjs');
  await build({
    entryPoints: ['src/panel/early/drawn.tsx'],
    outfile,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    logLevel: 'warning',
  });
  const { drawn } = (await import(pathToFileURL(outfile).href)) as { drawn: () => Record<string, string> };
  return Object.entries(drawn()).reduce((html, [mark, text]) => html.replace(`<!-- ${mark} -->`, () => text), page);
}

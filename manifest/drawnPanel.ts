// The panel as it stands in its page before any script runs, as HTML: the panel's own components, drawn by the build.
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

export async function drawnPanel(): Promise<string> {
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
  const { drawn } = (await import(pathToFileURL(outfile).href)) as { drawn: () => string };
  return drawn();
}

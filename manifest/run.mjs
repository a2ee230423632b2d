// Runs a TypeScript script on a Node that cannot: bundles it with esbuild, leaves packages outside, imports the result.
// Usage: node manifest/run.mjs path/to/script.ts [arguments]. The script runs in the project's root folder and sees its
// own arguments from process.argv[2].
import { rmSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const [script, ...rest] = process.argv.slice(2);
if (script === undefined) {
  console.error('Say which script to run: node manifest/run.mjs path/to/script.ts');
  process.exit(2);
}

const entry = resolve(script);
const cache = resolve(root, 'node_modules/.cache/sweepbook');
const outfile = resolve(cache, `${script.replace(/[^a-z0-9]+/gi, '-')}-${process.pid}.mjs`);
await mkdir(cache, { recursive: true });
await build({
  absWorkingDir: root,
  entryPoints: [entry],
  outfile,
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  target: 'node22',
  sourcemap: 'inline',
  logLevel: 'warning',
});

process.on('exit', () => rmSync(outfile, { force: true }));
process.chdir(root);
process.setSourceMapsEnabled(true);
process.argv = [process.argv[0], entry, ...rest];
await import(pathToFileURL(outfile).href);

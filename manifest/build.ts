// Builds dist/chromium and dist/firefox: each page's script and style bundled and minified, everything else copied.
// A page is an HTML file in src/panel or src/pages; its script and its style are the files of the same name beside it.
import { existsSync } from 'node:fs';
import { cp, mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { build } from 'esbuild';
import { chromiumManifest, chromiumTarget } from './chromium.ts';
import { firefoxManifest, firefoxTarget } from './firefox.ts';

const browsers = [
  { name: 'chromium', manifest: chromiumManifest, target: chromiumTarget },
  { name: 'firefox', manifest: firefoxManifest, target: firefoxTarget },
];

async function pagesIn(folder: string): Promise<string[]> {
  const names = existsSync(folder) ? await readdir(folder) : [];
  return names.filter((name) => name.endsWith('.html')).map((name) => join(folder, name));
}

function entriesOf(page: string): string[] {
  const stem = page.slice(0, -'.html'.length);
  return [`${stem}.ts`, `${stem}.tsx`, `${stem}.css`].filter((path) => existsSync(path));
}

const pages = [...(await pagesIn('src/panel')), ...(await pagesIn('src/pages'))];

for (const browser of browsers) {
  const out = join('dist', browser.name);
  await rm(out, { recursive: true, force: true });
  await mkdir(join(out, 'icons'), { recursive: true });
  await build({
    entryPoints: ['src/background/background.ts', ...pages.flatMap(entriesOf)],
    entryNames: '[name]',
    outdir: out,
    bundle: true,
    minify: true,
    format: 'esm',
    target: browser.target,
    jsx: 'automatic',
    jsxImportSource: 'preact',
    legalComments: 'none',
    logLevel: 'warning',
  });
  for (const page of pages) await cp(page, join(out, basename(page)));
  for (const size of Object.values(browser.manifest.icons ?? {})) await cp(size, join(out, size));
  await cp('manifest/_locales', join(out, '_locales'), { recursive: true });
  await writeFile(join(out, 'manifest.json'), `${JSON.stringify(browser.manifest, null, 2)}\n`);
  console.log(`built ${out}`);
}

// Builds dist/chromium and dist/firefox: each page's script and style bundled and minified, everything else copied.
// A page is an HTML file in src/panel or src/pages; its script and its style are the files of the same name beside it.
// What a page imports on demand becomes a file of its own in parts/; dist/chromium.json and dist/firefox.json, which are
// not shipped, tell which files the panel loads at once.
import { existsSync } from 'node:fs';
import { cp, mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { build, type BuildOptions } from 'esbuild';
import { chromiumManifest, chromiumTarget } from './chromium.ts';
import { firefoxManifest, firefoxTarget } from './firefox.ts';
import { loadingOf } from './loading.ts';
import { leaningOn } from './parts.ts';

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
  const options = {
    entryNames: '[name]',
    chunkNames: 'parts/[name]-[hash]',
    outdir: out,
    bundle: true,
    minify: true,
    charset: 'utf8',
    format: 'esm',
    target: browser.target,
    // Both browsers know \p{…}; without this each one becomes a RegExp call that stays even where it is not used.
    supported: { 'regexp-unicode-property-escapes': true },
    jsx: 'automatic',
    jsxImportSource: 'preact',
    legalComments: 'none',
    logLevel: 'warning',
  } satisfies BuildOptions;
  // A background script has no imports: it is one file.
  await build({ ...options, entryPoints: ['src/background/background.ts'] });
  for (const page of pages) {
    const entryPoints = entriesOf(page);
    const plugins = entryPoints.filter((path) => !path.endsWith('.css')).map(leaningOn);
    const { metafile } = await build({ ...options, entryPoints, plugins, splitting: true, metafile: true });
    if (basename(page) === 'panel.html') await writeFile(`${out}.json`, JSON.stringify(loadingOf(metafile, join(out, 'panel.js')), null, 2));
    await cp(page, join(out, basename(page)));
  }
  for (const size of Object.values(browser.manifest.icons ?? {})) await cp(size, join(out, size));
  await cp('manifest/_locales', join(out, '_locales'), { recursive: true });
  await writeFile(join(out, 'manifest.json'), `${JSON.stringify(browser.manifest, null, 2)}\n`);
  console.log(`built ${out}`);
}

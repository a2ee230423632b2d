// One browser's extension in a folder: each page's script and style bundled and minified, everything else copied. What a
// page imports on demand becomes a file of its own in parts/; a .json beside the folder tells which files the panel loads at once.
import { existsSync } from 'node:fs';
import { cp, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { build, type Plugin } from 'esbuild';
import { bundleEarly, bundlePage, bundleTabs, optionsFor, PANEL } from './bundles.ts';
import { chromiumManifest, chromiumTarget } from './chromium.ts';
import { drawnPanel } from './drawnPanel.ts';
import { firefoxManifest, firefoxTarget } from './firefox.ts';
import { licencesOf } from './licences.ts';
import { loadingOf } from './loading.ts';
import { shortLists } from './shortLists.ts';

const BROWSERS = {
  chromium: { manifest: chromiumManifest, target: chromiumTarget },
  firefox: { manifest: firefoxManifest, target: firefoxTarget },
};

async function pagesIn(folder: string): Promise<string[]> {
  const names = existsSync(folder) ? await readdir(folder) : [];
  return names
    .filter((name) => name.endsWith('.html'))
    .toSorted()
    .map((name) => join(folder, name));
}

const tabs = await pagesIn('src/pages');
const panel = await drawnPanel(await readFile(PANEL, 'utf8'));

/** `plugins`: what changes a source on its way, for a build that tests look at. */
export async function buildBrowser(name: keyof typeof BROWSERS, out: string, plugins: readonly Plugin[] = []): Promise<void> {
  const { manifest, target } = BROWSERS[name];
  await rm(out, { recursive: true, force: true });
  await mkdir(join(out, 'icons'), { recursive: true });
  const options = { ...optionsFor(out, target), plugins: [...plugins, shortLists] };
  // A background script has no imports, nor has what runs on the audio thread or in a worker: each is one file.
  const alone = await build({
    ...options,
    entryPoints: [
      'src/background/background.ts',
      'src/platform/ear/sampler.ts',
      'src/platform/pictures/pictureWorker.ts',
      'src/platform/pictures/practiceWorker.ts',
    ],
  });
  const early = await bundleEarly(options);
  const { metafile } = await bundlePage(PANEL, options);
  await writeFile(`${out}.json`, JSON.stringify(loadingOf(metafile, join(out, 'early.js'), join(out, 'panel.js')), null, 2));
  await writeFile(join(out, basename(PANEL)), panel);
  const inTabs = await bundleTabs(tabs, options);
  for (const page of tabs) await cp(page, join(out, basename(page)));
  for (const size of Object.values(manifest.icons ?? {})) await cp(size, join(out, size));
  await cp('manifest/_locales', join(out, '_locales'), { recursive: true });
  const inputs = [alone.metafile, early.metafile, metafile, inTabs.metafile].flatMap((one) => Object.keys(one.inputs));
  await writeFile(join(out, 'licences.txt'), await licencesOf(inputs));
  await writeFile(join(out, 'manifest.json'), `${JSON.stringify(manifest, null, 2)}\n`);
}

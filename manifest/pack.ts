// Builds and packs what is handed to the stores: a package for each browser, and the source that it was built from. The same
// source gives the same bytes in any folder, on any day: the sums that are printed say so.
import { createHash } from 'node:crypto';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import packageJson from '../package.json' with { type: 'json' };
import { buildBrowser } from './buildBrowser.ts';
import { filesIn, sourcesIn } from './filesIn.ts';
import { zipOf, type Packed } from './zip.ts';

const OUT = 'dist/packages';

async function write(what: string, files: readonly Packed[]): Promise<void> {
  const name = `${packageJson.name}-${packageJson.version}-${what}.zip`;
  const bytes = await zipOf(files);
  await writeFile(join(OUT, name), bytes);
  console.log(`${createHash('sha256').update(bytes).digest('hex')}  ${name}`);
}

await rm(OUT, { recursive: true, force: true });
await mkdir(OUT, { recursive: true });
for (const browser of ['chromium', 'firefox'] as const) {
  await buildBrowser(browser, `dist/${browser}`);
  await write(browser, await filesIn(`dist/${browser}`));
}
await write('source', await sourcesIn('.'));

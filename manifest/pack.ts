// Builds and packs what is handed to the stores: a package for each browser, and the source that it was built from. The same
// source gives the same bytes in any folder, on any day: the sums that are printed say so. Only some of them: name them,
// `npm run pack -- firefox source`.
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
const named = process.argv.slice(2);
const isWanted = (what: string): boolean => named.length === 0 || named.includes(what);
for (const browser of (['chromium', 'firefox'] as const).filter(isWanted)) {
  await buildBrowser(browser, `dist/${browser}`);
  await write(browser, await filesIn(`dist/${browser}`));
}
if (isWanted('source')) await write('source', await sourcesIn('.'));

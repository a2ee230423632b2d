// Builds and packs what is handed to the stores: a package for each browser, and the source that it was built from. The same
// source gives the same bytes in any folder, on any day: the sums that are printed say so. Only some of them: name them,
// `npm run pack -- firefox source`.
import { createHash } from 'node:crypto';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { packed, PACKAGES } from './packed.ts';

const OUT = 'dist/packages';

await rm(OUT, { recursive: true, force: true });
await mkdir(OUT, { recursive: true });
const named = process.argv.slice(2);
for (const what of PACKAGES.filter((one) => named.length === 0 || named.includes(one))) {
  const { name, bytes } = await packed(what, `dist/${what}`);
  await writeFile(join(OUT, name), bytes);
  console.log(`${createHash('sha256').update(bytes).digest('hex')}  ${name}`);
}

// One package, as a store takes it. A browser's is built first, in the folder that is named; the source's holds what the project is made of.
import packageJson from '../package.json' with { type: 'json' };
import { buildBrowser } from './buildBrowser.ts';
import { filesIn, sourcesIn } from './filesIn.ts';
import { zipOf } from './zip.ts';

export const PACKAGES = ['chromium', 'firefox', 'source'] as const;
type Package = (typeof PACKAGES)[number];

/** `folder`: where the browser's extension is built; what lay there goes. */
export async function packed(what: Package, folder: string): Promise<{ readonly name: string; readonly bytes: Uint8Array }> {
  return { name: `${packageJson.name}-${packageJson.version}-${what}.zip`, bytes: await zipOf(await filesOf(what, folder)) };
}

async function filesOf(what: Package, folder: string): ReturnType<typeof filesIn> {
  if (what === 'source') return sourcesIn('.');
  await buildBrowser(what, folder);
  return filesIn(folder);
}

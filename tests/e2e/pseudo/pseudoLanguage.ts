// The extension in a language that needs half as much room again (lengthened.ts), in a folder of its own.
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { Plugin } from 'esbuild';
import { buildBrowser } from '../../../manifest/buildBrowser.ts';

const LENGTHENED = resolve('tests/e2e/pseudo/lengthened.ts');

/** Every module of English hands out its words lengthened. */
const longer: Plugin = {
  name: 'a language that needs more room',
  setup({ onLoad }) {
    onLoad({ filter: /\/src\/words\/en\/\w+\.ts$/ }, async ({ path }) => {
      const source = await readFile(path, 'utf8');
      const plain = source.replace(/^export const words\b/m, 'const plain');
      if (plain === source) return { contents: source, loader: 'ts' };
      return { contents: `import { inPseudo } from ${JSON.stringify(LENGTHENED)};\n${plain}\nexport const words = inPseudo(plain);\n`, loader: 'ts' };
    });
  },
};

/** Builds it for Chromium into `folder` and returns where it lies. */
export async function inPseudoLanguage(folder: string): Promise<string> {
  const out = join(folder, 'chromium');
  await buildBrowser('chromium', out, [longer]);
  return out;
}

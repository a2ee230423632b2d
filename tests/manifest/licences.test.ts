// Contract of the notices: what is bundled travels with its licence, by name and version, and nothing is bundled without one.
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { build } from 'esbuild';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { licencesOf, packageOf } from '../../manifest/licences.ts';

let root = '';
beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), 'sweepbook-'));
  await put('LICENSE', 'Our own terms');
  await put('one.ts', `import { made } from 'made-up'; console.log(made);`);
  await put('node_modules/made-up/index.js', 'export const made = 1;');
});
afterEach(() => rm(root, { recursive: true, force: true }));

async function put(name: string, text: string): Promise<void> {
  await mkdir(dirname(join(root, name)), { recursive: true });
  await writeFile(join(root, name), text);
}

const says = (about: object): Promise<void> => put('node_modules/made-up/package.json', JSON.stringify({ name: 'made-up', main: 'index.js', ...about }));

async function licences(): Promise<string> {
  const { metafile } = await build({ absWorkingDir: root, entryPoints: ['one.ts'], bundle: true, write: false, metafile: true });
  return licencesOf(Object.keys(metafile.inputs), root);
}

test('a package that is bundled is named with its version, its licence, where its source is, and every notice it has', async () => {
  await says({ version: '1.2.3', license: 'Apache-2.0', repository: { url: 'git+https://example.org/made-up.git' } });
  await put('node_modules/made-up/LICENCE', 'Terms of the made-up package\r\nsecond line');
  await put('node_modules/made-up/NOTICE.txt', 'Made up by somebody');
  expect(await licences()).toBe(
    [
      'Our own terms\n',
      '-'.repeat(72),
      '\nmade-up 1.2.3',
      'Licence: Apache-2.0',
      'Source: https://example.org/made-up.git\n',
      'Terms of the made-up package',
      'second line\n',
      'Made up by somebody\n',
    ].join('\n'),
  );
});

test('a package without the text of its licence is not bundled', async () => {
  await says({ version: '1.2.3', license: 'MIT' });
  await expect(licences()).rejects.toThrow('made-up is bundled, but says no licence or comes without its text.');
});

test('a package that names no licence is not bundled', async () => {
  await says({ version: '1.2.3' });
  await put('node_modules/made-up/LICENSE', 'Terms');
  await expect(licences()).rejects.toThrow('made-up is bundled');
});

test('data from elsewhere travels with the licence that lies beside it', async () => {
  await put('one.ts', `import { list } from './list.ts'; console.log(list);`);
  await put('list.ts', 'export const list = [1];');
  await put('list.licence.txt', 'Terms of the list');
  expect(await licences()).toMatch(/^Our own terms\n\n-+\n\nTerms of the list\n$/);
});

test('whatever esbuild puts before a path, and however deep it lies, its package is known', () => {
  expect(packageOf('node_modules/@scope/name/dist/index.js')).toBe('node_modules/@scope/name');
  expect(packageOf('made here:node_modules/one/node_modules/two/index.js')).toBe('node_modules/one/node_modules/two');
  expect(packageOf('src/units.ts')).toBeUndefined();
});

// Contract of the packages: the same source gives the same bytes in any folder and any time zone, and what git does not track is not in them.
import { execFile, execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { promisify } from 'node:util';
import JSZip from 'jszip';
import packageJson from '../../package.json' with { type: 'json' };
import { afterEach, expect, test } from 'vitest';
import { filesIn, sourcesIn } from '../../manifest/filesIn.ts';
import { zipOf } from '../../manifest/zip.ts';

const made: string[] = [];
const emptyFolder = async (): Promise<string> => {
  const folder = await mkdtemp(join(tmpdir(), 'sweepbook-'));
  made.push(folder);
  return folder;
};
afterEach(async () => {
  await Promise.all(made.splice(0).map((folder) => rm(folder, { recursive: true, force: true })));
});

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The project as it lies here, but for its tests, in another folder; what is installed is shared. */
async function copyTo(folder: string): Promise<void> {
  for (const { name, bytes: content } of await sourcesIn('.')) {
    if (name.startsWith('tests/')) continue;
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), content);
  }
  await symlink(resolve('node_modules'), join(folder, 'node_modules'));
}

async function packedIn(folder: string, zone: string): Promise<Record<string, string>> {
  await copyTo(folder);
  await promisify(execFile)(process.execPath, ['manifest/run.mjs', 'manifest/pack.ts', 'chromium', 'source'], {
    cwd: folder,
    env: { ...process.env, TZ: zone },
  });
  const out = join(folder, 'dist/packages');
  const sums = (await readdir(out)).map(async (name) => {
    const sum = createHash('sha256').update(await readFile(join(out, name)));
    return [name, sum.digest('hex')] as const;
  });
  return Object.fromEntries(await Promise.all(sums));
}

test('two folders give the same packages, with the notices of all that is bundled', { timeout: 180_000 }, async () => {
  const [near, far] = [await emptyFolder(), join(await emptyFolder(), 'deeper/in a folder')];
  const [one, other] = await Promise.all([packedIn(near, 'Pacific/Auckland'), packedIn(far, 'America/Los_Angeles')]);
  expect(Object.keys(one).map((name) => name.replace(/\d+\.\d+\.\d+/, 'N'))).toEqual(['sweepbook-N-chromium.zip', 'sweepbook-N-source.zip']);
  expect(other).toEqual(one);
  const zip = await JSZip.loadAsync(await readFile(join(near, 'dist/packages', Object.keys(one)[0] ?? '')));
  const notices = (await zip.file('licences.txt')?.async('string')) ?? '';
  expect(notices).toContain('Permission is hereby granted');
  for (const name of Object.keys(packageJson.dependencies)) expect(notices).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+\nLicence: `, 'm'));
  expect(notices).toContain('Carnegie Mellon University');
});

test('a zip file is the same whatever the order its files came in, and says what may be run', async () => {
  const files = [
    { name: 'b/run', bytes: bytes('run'), runs: true },
    { name: 'a.txt', bytes: bytes('text'), runs: false },
  ];
  const zip = await zipOf(files);
  expect(await zipOf(files.toReversed())).toEqual(zip);
  const read = await JSZip.loadAsync(zip);
  expect(Object.values(read.files).map(({ name, date, unixPermissions }) => [name, date.toISOString(), unixPermissions])).toEqual([
    ['a.txt', '1980-01-01T00:00:00.000Z', 0o100_644],
    ['b/run', '1980-01-01T00:00:00.000Z', 0o100_755],
  ]);
  expect(await read.file('b/run')?.async('string')).toBe('run');
});

test('the source package holds what git tracks; without git, all but what is installed or built', async () => {
  const folder = await emptyFolder();
  for (const name of ['kept.ts', 'loose.ts', 'dist/built.js', 'node_modules/one/index.js', 'run.log']) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), name);
  }
  const names = async () => (await sourcesIn(folder)).map(({ name }) => name).toSorted();
  expect(await names()).toEqual(['kept.ts', 'loose.ts']);
  execFileSync('git', ['init', '--quiet'], { cwd: folder });
  execFileSync('git', ['add', 'kept.ts'], { cwd: folder });
  expect(await names()).toEqual(['kept.ts']);
});

test('the files of a build are named by their path in it', async () => {
  const folder = await emptyFolder();
  await mkdir(join(folder, 'parts/deep'), { recursive: true });
  await writeFile(join(folder, 'parts/deep/one.js'), '1');
  expect(await filesIn(folder)).toEqual([{ name: 'parts/deep/one.js', bytes: Buffer.from('1'), runs: false }]);
});

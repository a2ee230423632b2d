// The files of a folder that go into a package: all of a build; of the project, what git tracks, which is what a store needs to build it again.
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Packed } from './zip.ts';

/** What git passes over: installed, built or written by programs. An unpacked source package has no git to ask. */
const PASSED_OVER = /^(node_modules|dist)(\/|$)|\.log$/;

export async function filesIn(folder: string): Promise<Packed[]> {
  return Promise.all((await namesIn(folder)).map((name) => packed(folder, name)));
}

export async function sourcesIn(folder: string): Promise<Packed[]> {
  const names = existsSync(join(folder, '.git')) ? trackedIn(folder) : (await namesIn(folder)).filter((name) => !PASSED_OVER.test(name));
  return Promise.all(names.map((name) => packed(folder, name)));
}

function trackedIn(folder: string): string[] {
  const listed = execFileSync('git', ['ls-files', '-z'], { cwd: folder, encoding: 'utf8', maxBuffer: 2 ** 26 });
  return listed.split('\0').filter((name) => name !== '' && existsSync(join(folder, name)));
}

async function namesIn(folder: string, below = ''): Promise<string[]> {
  const entries = await readdir(join(folder, below), { withFileTypes: true });
  const names = entries.map(async (entry) => {
    const name = below + entry.name;
    return entry.isDirectory() && entry.name !== 'node_modules' ? namesIn(folder, `${name}/`) : entry.isFile() ? [name] : [];
  });
  return (await Promise.all(names)).flat();
}

/** The right to run a file is the only one that git keeps. */
async function packed(folder: string, name: string): Promise<Packed> {
  const path = join(folder, ...name.split('/'));
  const [bytes, { mode }] = await Promise.all([readFile(path), stat(path)]);
  return { name, bytes, runs: (mode & 0o100) !== 0 };
}

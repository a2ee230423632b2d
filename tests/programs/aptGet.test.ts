import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { aptGet } from './aptGet.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'apt-'));
  vi.stubEnv('PATH', `${folder}${delimiter}${process.env['PATH']}`);
  vi.spyOn(console, 'log').mockImplementation(() => undefined);
  vi.spyOn(process.stderr, 'write').mockImplementation(() => true);
});
afterEach(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

/** A stand-in that notes what it was asked for, and says and returns what the numbered attempt should. */
function stand(script: string): () => string[] {
  const calls = join(folder, 'calls');
  writeFileSync(join(folder, 'apt-get'), `#!/bin/sh\necho "$@" >> ${calls}\nn=$(wc -l < ${calls})\n${script}\n`);
  chmodSync(join(folder, 'apt-get'), 0o755);
  return () => readFileSync(calls, 'utf8').trim().split('\n');
}

test('a list that another program holds is waited for, and the same is asked again', async () => {
  const calls = stand('[ $n -lt 3 ] && echo "E: Could not get lock /var/lib/apt/lists/lock." >&2 && exit 100; exit 0');
  expect(await aptGet(['update'], 1)).toBe(true);
  expect(calls()).toHaveLength(3);
});

test('any other fault is told at once', async () => {
  const calls = stand('echo "E: Unable to locate package" >&2; exit 100');
  expect(await aptGet(['install', '-y', 'nothing'], 1)).toBe(false);
  expect(calls()).toHaveLength(1);
});

test('without apt-get it is a fault and no crash', async () => {
  vi.stubEnv('PATH', folder);
  expect(await aptGet(['update'], 1)).toBe(false);
});

// A copy of the tree that may be spoiled: whoever works in the real one sees nothing of it.
import { cpSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const LEFT = new Set(['.git', 'node_modules', 'dist']);

export interface CopiedTree {
  readonly root: string;
  remove(): void;
}

export function copiedTree(): CopiedTree {
  const root = mkdtempSync(join(tmpdir(), 'sweepbook-spoil-'));
  for (const name of readdirSync('.')) if (!LEFT.has(name)) cpSync(name, join(root, name), { recursive: true });
  symlinkSync(resolve('node_modules'), join(root, 'node_modules'));
  return { root, remove: () => rmSync(root, { recursive: true, force: true }) };
}

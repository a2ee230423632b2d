// Before anything is driven: what is missing is installed, once, on a Debian machine where we are root. Elsewhere one
// sentence names all of it. Two runs at once wait for each other: the lock is the kernel's, so it ends with its holder.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { missing, whatIsMissing, type Program } from './programs.ts';

const LOCK = '/run/sweepbook-install.lock';

/** Throws the sentence where something is still missing afterwards. */
export function makeReady(names: readonly Program[]): void {
  const wanted = missing(names);
  if (wanted.length > 0 && existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    console.log(`Installing ${wanted.join(', ')}, or waiting for another run that does. This takes a few minutes, once …`);
    // `flock` belongs to util-linux, without which there is no Debian. Services that an installation starts do not get hold of the lock.
    const work = [process.execPath, 'manifest/run.mjs', 'tests/programs/install.ts', ...names];
    spawnSync('flock', ['--close', LOCK, ...work], { stdio: ['ignore', 'inherit', 'inherit'] });
  }
  const still = missing(names);
  if (still.length > 0) throw new Error(whatIsMissing(still));
}

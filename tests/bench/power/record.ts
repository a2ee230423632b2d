// The count of kills in a file, one line each, so that a bench that is itself cut off goes on where it stopped. A kill stands there
// once the start after it has been looked through.
import { appendFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Cut } from './fuse.ts';
import type { BrowserName } from './place.ts';

export interface Kill {
  readonly kill: number;
  readonly seed: number;
  readonly browser: BrowserName;
  readonly work: string;
  readonly cut: Cut;
  /** What had been acknowledged since the start, and all that was held to be there. */
  readonly acknowledged: number;
  readonly standing: number;
  readonly lost: readonly string[];
  /** Why the work did not go on, where it stopped by itself. */
  readonly stuck: string | null;
  /** The build that was killed. */
  readonly build: string;
}

export function readKills(file: string): Kill[] {
  if (!existsSync(file)) return [];
  return readFileSync(file, 'utf8').split('\n').flatMap(whole);
}

/** The last line may have been cut off. */
function whole(line: string): Kill[] {
  try {
    return line === '' ? [] : [JSON.parse(line) as Kill];
  } catch {
    return [];
  }
}

export function addKill(file: string, kill: Kill): void {
  mkdirSync(dirname(file), { recursive: true });
  const ended = !existsSync(file) || /(^|\n)$/.test(readFileSync(file, 'utf8'));
  appendFileSync(file, `${ended ? '' : '\n'}${JSON.stringify(kill)}\n`);
}

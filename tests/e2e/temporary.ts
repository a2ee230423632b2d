// Folders that live as long as one test.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export function temporaryFolder(): string {
  return mkdtempSync(join(tmpdir(), 'sweepbook-'));
}

export function removeFolder(path: string): void {
  rmSync(path, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
}

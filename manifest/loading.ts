// Which of a page's scripts are loaded at once, and which only on demand.
import type { Metafile } from 'esbuild';

export interface Loading {
  /** The entry, and whatever it imports by a plain `import`. */
  readonly atOnce: readonly string[];
  /** What is imported on demand, and whatever only that needs. */
  readonly onDemand: readonly string[];
}

export function loadingOf({ outputs }: Metafile, entry: string): Loading {
  const atOnce = new Set([entry]);
  for (const file of atOnce) {
    for (const { path, kind } of outputs[file]?.imports ?? []) if (kind === 'import-statement') atOnce.add(path);
  }
  const scripts = Object.keys(outputs).filter((path) => path.endsWith('.js'));
  return { atOnce: [...atOnce], onDemand: scripts.filter((path) => !atOnce.has(path)) };
}

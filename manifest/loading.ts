// Which of a page's scripts are loaded at once, and which only on demand.
import type { Metafile } from 'esbuild';

export interface Loading {
  /** The entry, and whatever it imports by a plain `import`. */
  readonly atOnce: readonly string[];
  /** What is imported on demand, and whatever only that needs. */
  readonly onDemand: readonly string[];
  /** What only voice needs: read when the person asks about it, or has said yes to it. */
  readonly listening: readonly string[];
}

const LISTENING = /\/(listener|ear|listening|ownWords|asking|markTold|voiceScreen|voice)-/;

export function loadingOf({ outputs }: Metafile, entry: string): Loading {
  const scripts = Object.keys(outputs).filter((path) => path.endsWith('.js'));
  const importsOf = (path: string): string[] =>
    (outputs[path]?.imports ?? []).flatMap((one) => (one.kind === 'import-statement' ? [one.path] : []));
  const withImports = (roots: readonly string[]): Set<string> => {
    const all = new Set(roots);
    for (const path of all) for (const imported of importsOf(path)) all.add(imported);
    return all;
  };
  const atOnce = withImports([entry]);
  const parts = scripts.filter((path) => outputs[path]?.entryPoint !== undefined && !atOnce.has(path));
  const others = withImports(parts.filter((path) => !LISTENING.test(path)));
  const onDemand = scripts.filter((path) => others.has(path) && !atOnce.has(path));
  const listening = scripts.filter((path) => !atOnce.has(path) && !others.has(path));
  return { atOnce: [...atOnce], onDemand, listening };
}

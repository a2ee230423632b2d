// Which of a page's scripts are loaded at once, and which only on demand.
import type { Metafile } from 'esbuild';
import { LISTENING } from './listening.ts';
import { partOf } from './parts.ts';

export interface Loading {
  /** What runs before anything is seen. */
  readonly first: readonly string[];
  /** That, the page's script, and whatever this imports by a plain `import`. */
  readonly atOnce: readonly string[];
  /** What is imported on demand, and whatever only that needs. */
  readonly onDemand: readonly string[];
  /** What only voice needs: read when the person asks about it, or has said yes to it. */
  readonly listening: readonly string[];
}

type Output = Metafile['outputs'][string];
type Kind = Output['imports'][number]['kind'];

export function loadingOf({ outputs }: Metafile, early: string, script: string): Loading {
  const scripts = Object.keys(outputs).filter((path) => path.endsWith('.js'));
  const reached = (roots: readonly string[], kinds: readonly Kind[] = ['import-statement']): Set<string> => reachedIn(outputs, roots, kinds);
  const needed = reached([script]);
  const parts = scripts.filter((path) => partOf(outputs[path]) !== undefined && !needed.has(path));
  const others = reached(parts.filter((path) => !LISTENING.has(partOf(outputs[path]) ?? '')));
  const onDemand = scripts.filter((path) => others.has(path) && !needed.has(path));
  const listening = scripts.filter((path) => !needed.has(path) && !others.has(path));
  return { first: [early], atOnce: [early, ...needed], onDemand, listening };
}

/** The parts that nothing but listening asks for, by their sources: what `LISTENING` must name. */
export function onlyForListening({ outputs }: Metafile, script: string): string[] {
  const without: Metafile['outputs'] = {};
  for (const [path, output] of Object.entries(outputs)) if (!LISTENING.has(partOf(output) ?? '')) without[path] = output;
  const reached = reachedIn(without, [script], ['import-statement', 'dynamic-import']);
  return Object.entries(outputs).flatMap(([path, output]) => (reached.has(path) ? [] : (partOf(output) ?? [])));
}

function reachedIn(outputs: Metafile['outputs'], roots: readonly string[], kinds: readonly Kind[]): Set<string> {
  const all = new Set(roots);
  for (const path of all)
    for (const { kind, path: imported } of outputs[path]?.imports ?? []) if (imported in outputs && kinds.includes(kind)) all.add(imported);
  return all;
}

// Which of a page's scripts are loaded at once, and which only on demand.
import type { Metafile } from 'esbuild';
import { LANGUAGES, type Language } from '../src/language.ts';
import { isForListening } from './listening.ts';
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
  /** What each language has of its own, which is read only where it is in use: its sentences, and what it is heard with. */
  readonly languages: Readonly<Record<Language, OneLanguage>>;
}

interface OneLanguage {
  readonly words: readonly string[];
  readonly heard: readonly string[];
  /** Of its sentences, those that are read from the opened panel to the result of a first sweep. */
  readonly firstSweep: readonly string[];
}

type Output = Metafile['outputs'][string];
type Kind = Output['imports'][number]['kind'];

export function loadingOf({ outputs }: Metafile, early: string, script: string): Loading {
  const scripts = Object.keys(outputs).filter((path) => path.endsWith('.js'));
  const reached = (roots: readonly string[], kinds: readonly Kind[] = ['import-statement']): Set<string> => reachedIn(outputs, roots, kinds);
  const needed = reached([script]);
  const parts = scripts.filter((path) => partOf(outputs[path]) !== undefined && !needed.has(path));
  const others = reached(parts.filter((path) => !isForListening(partOf(outputs[path]) ?? '')));
  const apart = scripts.filter((path) => !needed.has(path));
  const shared = apart.filter((path) => languageOf(outputs[path]) === null);
  const onDemand = shared.filter((path) => others.has(path));
  const listening = shared.filter((path) => !others.has(path));
  const own = (language: Language, kind: 'words' | 'heard'): string[] =>
    apart.filter((path) => languageOf(outputs[path]) === language && kindOf(outputs[path]) === kind);
  const ofFirstSweep = reached(parts.filter((path) => FIRST_SWEEP.test(partOf(outputs[path]) ?? '')));
  const languages = Object.fromEntries(
    LANGUAGES.map((language) => {
      const words = own(language, 'words');
      return [language, { words, heard: own(language, 'heard'), firstSweep: words.filter((path) => ofFirstSweep.has(path)) }];
    }),
  ) as unknown as Loading['languages'];
  return { first: [early], atOnce: [early, ...needed], onDemand, listening, languages };
}

/** What a person meets who opens the panel, runs a sweep and reads what came of it. */
const FIRST_SWEEP = /\/(?:areas|first|firstSweep|vocabulary)\.ts$/;

const OF_LANGUAGE = new RegExp(`^src/(words|hearing/languages)/(${LANGUAGES.join('|')})/`);

/** The language that all of it belongs to; null for what none has to itself. */
function languageOf(output: Output | undefined): string | null {
  const found = new Set(Object.keys(output?.inputs ?? {}).map((source) => OF_LANGUAGE.exec(source.split(':').at(-1) ?? '')?.[2] ?? null));
  const [language = null] = found;
  return found.size === 1 ? language : null;
}

const kindOf = (output: Output | undefined): 'words' | 'heard' =>
  Object.keys(output?.inputs ?? {}).every((source) => source.split(':').at(-1)?.startsWith('src/hearing/')) ? 'heard' : 'words';

/** The parts that nothing but listening asks for, by their sources: what `LISTENING` must name. */
export function onlyForListening({ outputs }: Metafile, script: string): string[] {
  const without: Metafile['outputs'] = {};
  for (const [path, output] of Object.entries(outputs)) if (!isForListening(partOf(output) ?? '')) without[path] = output;
  const reached = reachedIn(without, [script], ['import-statement', 'dynamic-import']);
  return Object.entries(outputs).flatMap(([path, output]) => (reached.has(path) ? [] : (partOf(output) ?? [])));
}

function reachedIn(outputs: Metafile['outputs'], roots: readonly string[], kinds: readonly Kind[]): Set<string> {
  const all = new Set(roots);
  for (const path of all)
    for (const { kind, path: imported } of outputs[path]?.imports ?? []) if (imported in outputs && kinds.includes(kind)) all.add(imported);
  return all;
}

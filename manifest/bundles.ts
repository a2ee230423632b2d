// How scripts and styles are bundled, the same for every browser, for the build and for the tests of it.
// A page is an HTML file in src/panel or src/pages; its script and its style are the files of the same name beside it. The
// panel has a first script, early.ts, which asks for the panel's own script when the first frame is drawn.
import { existsSync } from 'node:fs';
import { build, type BuildOptions, type BuildResult, type Plugin } from 'esbuild';
import { polyfillAsModule } from './asModule.ts';
import { leaningOn } from './parts.ts';

export const PANEL = 'src/panel/panel.html';
/** The part that reads what is stored, as soon as the panel's script is there. */
const READ_NEXT = 'src/panel/session/desk.ts';

type Options = BuildOptions & { readonly metafile: true };
type Bundled = BuildResult<{ metafile: true }>;

export const optionsFor = (out: string, target: string) =>
  ({
    entryNames: '[name]',
    chunkNames: 'parts/[name]-[hash]',
    outdir: out,
    bundle: true,
    minify: true,
    charset: 'utf8',
    format: 'esm',
    target,
    // Both browsers know \p{…}; without this each one becomes a RegExp call that stays even where it is not used.
    supported: { 'regexp-unicode-property-escapes': true },
    jsx: 'automatic',
    jsxImportSource: 'preact',
    // What was bundled: its licences go with it.
    metafile: true,
    // Where packages lie behind a link, the paths that go into the names of the files must not say where it leads.
    preserveSymlinks: true,
    legalComments: 'none',
    logLevel: 'warning',
  }) satisfies BuildOptions;

/** The pages in tabs share their parts: none is waited for as the panel is. */
export const bundleTabs = (pages: readonly string[], options: Options): Promise<Bundled> =>
  build({ ...options, entryPoints: pages.flatMap(sourcesOf), plugins: [...(options.plugins ?? []), polyfillAsModule], splitting: true });

/** The script and the style of a page. */
function sourcesOf(page: string): string[] {
  const stem = page.slice(0, -'.html'.length);
  return [`${stem}.ts`, `${stem}.tsx`, `${stem}.css`].filter((path) => existsSync(path));
}

export function bundlePage(page: string, options: Options): Promise<Bundled> {
  const entryPoints = sourcesOf(page);
  const plugins = [
    ...(options.plugins ?? []),
    polyfillAsModule,
    ...entryPoints.filter((path) => !path.endsWith('.css')).map((script) => leaningOn(script, page === PANEL ? READ_NEXT : null)),
  ];
  return build({ ...options, entryPoints, plugins, splitting: true });
}

/** One file, so that nothing else is read before it runs. */
export const bundleEarly = (options: Options): Promise<Bundled> =>
  build({ ...options, entryPoints: ['src/panel/early/early.ts'], plugins: [...(options.plugins ?? []), leavingOut('panel')] });

/** The page's script is a file of its own, which lies beside this one. */
const leavingOut = (script: string): Plugin => ({
  name: 'a script that is there',
  setup({ onResolve }) {
    onResolve({ filter: new RegExp(`/${script}\\.tsx$`) }, () => ({ path: `./${script}.js`, external: true }));
  },
});

// The sources of the pure rooms, as the compiler is told of them; sentences are no code.
import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import ts from 'typescript';

const CONFIG = 'tsconfig/pure.json';

export interface PureSources {
  /** Paths from the repository's root, with slashes. */
  readonly files: readonly string[];
  readonly options: ts.CompilerOptions;
}

export function pureSources(): PureSources {
  const { config } = ts.readConfigFile(CONFIG, (path) => readFileSync(path, 'utf8')) as { config: unknown };
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, 'tsconfig');
  const files = fileNames.map((path) => relative('.', path).replaceAll('\\', '/')).filter((path) => !path.startsWith('src/words/'));
  return { files: files.sort(), options };
}

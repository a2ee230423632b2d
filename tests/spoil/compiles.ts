// Whether the compiler would let a spoiled source pass: what it refuses needs no test, and is not counted. One long-lived
// service looks at the one file; what is only unused no longer is no fault here.
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import ts from 'typescript';
import { spoiled, type Place } from './places.ts';
import type { PureSources } from './pureSources.ts';

export function compiler({ files, options }: PureSources): (place: Place) => boolean {
  let now: { path: string; text: string; version: number } = { path: '', text: '', version: 0 };
  const read = (path: string): string => (path === now.path ? now.text : readFileSync(path, 'utf8'));
  const service = ts.createLanguageService({
    getCompilationSettings: () => ({ ...options, noUnusedLocals: false, noUnusedParameters: false, incremental: false, allowUnreachableCode: true }),
    getScriptFileNames: () => files.map((file) => resolve(file)),
    getScriptVersion: (path) => (path === now.path ? String(now.version) : '0'),
    getScriptSnapshot: (path) => (ts.sys.fileExists(path) ? ts.ScriptSnapshot.fromString(read(path)) : undefined),
    getCurrentDirectory: () => process.cwd(),
    getDefaultLibFileName: ts.getDefaultLibFilePath,
    fileExists: (path) => ts.sys.fileExists(path),
    readFile: (path) => ts.sys.readFile(path),
  });
  return (place) => {
    const path = resolve(place.file);
    now = { path, text: spoiled(readFileSync(path, 'utf8'), place), version: now.version + 1 };
    return service.getSyntacticDiagnostics(path).length === 0 && service.getSemanticDiagnostics(path).length === 0;
  };
}

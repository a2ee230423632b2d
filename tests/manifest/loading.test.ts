// Contract of the build's account of what is loaded when: what listening needs is a list that the build itself bears out.
import { beforeAll, expect, test } from 'vitest';
import type { Metafile } from 'esbuild';
import { bundlePage, optionsFor, PANEL } from '../../manifest/bundles.ts';
import { chromiumTarget } from '../../manifest/chromium.ts';
import { isForListening, LISTENING } from '../../manifest/listening.ts';
import { loadingOf, onlyForListening } from '../../manifest/loading.ts';
import { partOf } from '../../manifest/parts.ts';

let metafile: Metafile;
beforeAll(async () => {
  ({ metafile } = await bundlePage(PANEL, { ...optionsFor('dist/chromium', chromiumTarget), write: false }));
});

const parts = (): string[] => Object.values(metafile.outputs).flatMap((output) => partOf(output) ?? []);

test('every listed part of listening is a part that the build makes', () => {
  expect([...LISTENING].filter((part) => !parts().includes(part))).toEqual([]);
});

test('what nothing but listening asks for is listed', () => {
  expect(
    onlyForListening(metafile, 'dist/chromium/panel.js')
      .filter((part) => !/\/\w\w\/\w+\.ts$/.test(part))
      .toSorted(),
  ).toEqual([...LISTENING].toSorted());
});

test('every part that hears is listed', () => {
  expect(parts().filter((part) => part.startsWith('src/platform/ear/') && !LISTENING.has(part))).toEqual([]);
});

test('the first script, what is loaded at once, on demand and for listening are apart and make up the whole', () => {
  const { first, atOnce, onDemand, listening, languages } = loadingOf(metafile, 'dist/chromium/early.js', 'dist/chromium/panel.js');
  const all = [...atOnce, ...onDemand, ...listening, ...Object.values(languages).flatMap(({ words, heard }) => [...words, ...heard])];
  expect(new Set(all).size).toBe(all.length);
  expect(atOnce).toEqual(expect.arrayContaining([...first]));
  const scripts = Object.keys(metafile.outputs).filter((path) => path.endsWith('.js'));
  expect(all.toSorted()).toEqual([...scripts, 'dist/chromium/early.js'].toSorted());
});

test('what only a language has is its own, and everything that only listening asks for is listed', () => {
  const only = onlyForListening(metafile, 'dist/chromium/panel.js');
  expect(only.filter((part) => !isForListening(part))).toEqual([]);
  const { languages } = loadingOf(metafile, 'dist/chromium/early.js', 'dist/chromium/panel.js');
  for (const { words, heard, firstSweep } of Object.values(languages)) {
    expect(words.length).toBeGreaterThan(25);
    expect(heard.length).toBeGreaterThan(1);
    expect(firstSweep.length).toBeGreaterThan(1);
  }
});

test('what judges a verdict is not loaded at once: the start is drawn without it', () => {
  const { atOnce } = loadingOf(metafile, 'dist/chromium/early.js', 'dist/chromium/panel.js');
  const sources = atOnce.flatMap((path) => Object.keys(metafile.outputs[path]?.inputs ?? {}));
  expect(sources).toContain('src/panel/app.tsx');
  expect(sources.filter((source) => /^src\/sweep\/(belief|end|next|trouble|transfer|t(urn|ransition))\b/.test(source))).toEqual([]);
});

test('no name the build goes by says in which folder it lies, so that two clones come out the same', () => {
  expect(JSON.stringify(metafile)).not.toContain(process.cwd());
});

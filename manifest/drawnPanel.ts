// The panel's page before any script runs: the panel's own components and words, drawn by the build where marks stand for them.
import { rm } from 'node:fs/promises';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { Drawn } from '../src/panel/early/drawn.tsx';

export async function drawnPanel(page: string): Promise<string> {
  // Another build may be going on.
  const outfile = resolve(`node_modules/.cache/sweepbook/drawn-${process.pid}.mjs`);
  await build({
    entryPoints: ['src/panel/early/drawn.tsx'],
    outfile,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node22',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    logLevel: 'warning',
  });
  const { drawn } = (await import(pathToFileURL(outfile).href)) as { drawn: () => Promise<readonly Drawn[]> };
  await rm(outfile);
  const [english, ...others] = await drawn();
  if (!english) throw new Error('The start is drawn in no language.');
  const templates = others.map(({ language, start, unread }) => `<template lang="${language}"><div>${start}</div><p>${unread}</p></template>`);
  const marks = { name: english.name, drawn: english.start, unread: english.unread, templates: templates.join('') };
  return Object.entries(marks).reduce((html, [mark, text]) => html.replace(`<!-- ${mark} -->`, () => text), page);
}

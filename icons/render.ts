// Renders icon.svg to the PNG sizes the manifests name. Run by hand when the mark changes:
// node manifest/run.mjs icons/render.ts
import { readFile } from 'node:fs/promises';
import puppeteer from 'puppeteer-core';
import { base } from '../manifest/base.ts';
import { program } from '../tests/programs/programs.ts';
import { marginOf } from './margin.ts';

const svg = await readFile('icons/icon.svg', 'utf8');
const browser = await puppeteer.launch({ executablePath: program('chromium'), args: ['--no-sandbox'] });
const page = await browser.newPage();
for (const [size, path] of Object.entries(base.icons)) {
  const side = Number(size);
  const drawn = side - 2 * marginOf(side);
  await page.setViewport({ width: side, height: side });
  await page.setContent(`<style>body { margin: ${marginOf(side)}px } svg { display: block; width: ${drawn}px; height: ${drawn}px }</style>${svg}`);
  await page.screenshot({ path: path as `${string}.png`, omitBackground: true });
}
await browser.close();

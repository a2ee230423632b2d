// Contract of the printed target: on A4 and on Letter, what a real Chromium prints is one page a sheet, its scale is 100 mm and its bars are as wide as reckoned, to 0.1 mm. The PDF is read as it was written: page boxes in points, and
// the filled rectangles of its drawing.
import { writeFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { magnification } from '../../src/optics/quantity.ts';
import { measureTarget } from '../../src/optics/print/measure.ts';
import { PAPERS, type PaperName } from '../../src/optics/print/sheets.ts';
import { writeOrder, type TargetOrder } from '../../src/optics/print/order.ts';
import { millimetres } from '../../src/units.ts';
import { accessibilityFaults } from './axe.ts';
import { launchChromium } from './chromium.ts';
import { picture, pictureFile, wear } from './screens.ts';

const POINTS_A_MILLIMETRE = 72 / 25.4;

const order = (paper: PaperName, m: number): TargetOrder => ({
  magnification: magnification(m),
  pitch: millimetres(0.006),
  area: millimetres(2.5),
  sensor: { width: millimetres(36), height: millimetres(24) },
  depth: millimetres(90),
  words: ['Orrin 85 f/1.8 on Velde M1 <b>&', '85 mm at 4.25 m, 20 Nov 2026'],
  paper,
});

async function open(asked: string): Promise<Page> {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab(`target.html#${asked}`, { width: 1000, height: 800 });
  await page.waitForFunction(() => (document.querySelector('#says')?.textContent ?? '') !== '');
  return page;
}

/** The page's own streams, unpacked. */
function streamsOf(pdf: Uint8Array): string[] {
  const bytes = Buffer.from(pdf);
  const text = bytes.toString('latin1');
  return [...text.matchAll(/stream\r?\n/g)].flatMap(({ index, 0: head }) => {
    const start = index + head.length;
    try {
      return [inflateSync(bytes.subarray(start, text.indexOf('endstream', start))).toString('latin1')];
    } catch {
      return [];
    }
  });
}

const boxesOf = (pdf: Uint8Array): number[][] =>
  [
    ...Buffer.from(pdf)
      .toString('latin1')
      .matchAll(/\/MediaBox\s*\[([^\]]+)\]/g),
  ].map(([, box = '']) => box.trim().split(/\s+/).map(Number));

interface Box {
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

/** Filled rectangles in millimetres on paper, through the scale of the drawing's matrices as they stand. */
function rectanglesIn(stream: string): Box[] {
  const stack: { x: number; y: number; left: number }[] = [];
  let now = { x: 1, y: 1, left: 0 };
  const found: Box[] = [];
  const numbers: number[] = [];
  for (const token of stream.split(/\s+/)) {
    const value = Number(token);
    if (token !== '' && !Number.isNaN(value)) {
      numbers.push(value);
      continue;
    }
    const [a = 1, b = 0, c = 0, d = 1, e = 0] = numbers.slice(-6);
    if (token === 'q') stack.push(now);
    else if (token === 'Q') now = stack.pop() ?? now;
    else if (token === 'cm' && b === 0 && c === 0) now = { x: now.x * a, y: now.y * d, left: now.left + now.x * e };
    else if (token === 're') {
      const [x = 0, , width = 0, height = 0] = numbers.slice(-4);
      const inMm = (points: number): number => Math.abs(points) / POINTS_A_MILLIMETRE;
      found.push({ left: (now.left + now.x * x) / POINTS_A_MILLIMETRE, width: inMm(width * now.x), height: inMm(height * now.y) });
    }
    numbers.length = 0;
  }
  return found;
}

/** Chromium rounds the sheet, though not what is drawn on it, to whole pixels. */
const PIXEL = 25.4 / 96;

const near = (value: number, wanted: number, within = 0.1): boolean => Math.abs(value - wanted) <= within;

test.each(['A4', 'Letter'] as const)('on %s the PDF has the paper\u2019s size, and scale and bars are true to 0.1 mm', async (paper) => {
  const asked = order(paper, 1 / 48);
  const page = await open(writeOrder(asked));
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  writeFileSync(pictureFile(`target-${paper}`).replace(/png$/, 'pdf'), pdf);
  const boxes = boxesOf(pdf);
  const on = PAPERS[paper];
  // One sheet of the target, one of the ramp, and no blank page after either.
  expect(boxes).toHaveLength(2);
  for (const [left, bottom, right, top] of boxes) {
    expect([left, bottom]).toEqual([0, 0]);
    expect(near((right ?? 0) / POINTS_A_MILLIMETRE, on.width, PIXEL), `width ${right} pt`).toBe(true);
    expect(near((top ?? 0) / POINTS_A_MILLIMETRE, on.height, PIXEL), `height ${top} pt`).toBe(true);
  }

  const measure = measureTarget(asked);
  if (!measure.ok) throw new Error(measure.fault.is);
  const rectangles = streamsOf(pdf).flatMap(rectanglesIn);
  // The scale's base line runs between the outer edges of its end marks.
  const scale = rectangles.filter(({ width, height }) => near(width, 100) && near(height, 0.3));
  expect(scale.map(({ width }) => Number(width.toFixed(1)))).toEqual([100]);
  const ends = rectangles.filter(({ width, height }) => near(width, 0.3, 0.05) && near(height, 5, 0.05)).map(({ left }) => left);
  expect(ends).toHaveLength(2);
  expect(near(Math.max(...ends) + 0.3 - Math.min(...ends), 100)).toBe(true);
  const { bar } = measure.value;
  const lanes = rectangles.filter(({ width, height }) => near(width, bar, 0.01) && height > 3 * bar);
  expect(lanes.length).toBeGreaterThan(5);
});

test('a long lens gets several sheets that join, each of the paper\u2019s size', async () => {
  const page = await open(writeOrder(order('A4', 1 / 150)));
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  const boxes = boxesOf(pdf);
  expect(boxes.length).toBe(await page.$$eval('.sheet', (all) => all.length));
  expect(boxes.length).toBeGreaterThan(4);
  expect(boxes.every(([, , right = 0, top = 0]) => near(right / POINTS_A_MILLIMETRE, 210, PIXEL) && near(top / POINTS_A_MILLIMETRE, 297, PIXEL))).toBe(true);
});

test('the page changes paper, has no fault in either theme, and shows text from its address as text', async () => {
  const page = await open(writeOrder(order('A4', 1 / 48)));
  for (const theme of ['dark', 'light'] as const) {
    await wear(page, theme);
    await picture(page, `target-page-${theme}`);
    expect(await accessibilityFaults(page)).toEqual([]);
  }
  expect(await page.$$eval('.sheet b', (all) => all.length)).toBe(0);
  await page.click('input[value="Letter"]');
  const width = await page.$eval('.sheet svg', (svg) => (svg.getBoundingClientRect().width * 25.4) / 96);
  expect(width).toBeCloseTo(215.9, 1);
});

test('an address that names no target gets one sentence that says what to do', async () => {
  const page = await open('%7Bnonsense');
  expect(await page.$eval('#says', (says) => says.textContent)).toBe('This page does not know which target to draw. Open it from the bench in the panel.');
});

// A whole job in a real Chromium: a zoom at both ends, near and far, and once behind a converter, planned, measured through
// the panel, cut short by a kill, picked up, and ending in what to enter and a page on paper. The practice camera itself
// never counts for the kit, so the verdicts come from practice cameras' bands and are told by keys on the kit's situations.
import { readFileSync } from 'node:fs';
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { newBody, newConverter, newLens } from '../../src/kit/kit.ts';
import type { LogRecord } from '../../src/logbook/record.ts';
import { USUAL_SETTINGS } from '../../src/usualSettings.ts';
import { millimetres, moment, seconds } from '../../src/units.ts';
import { accessibilityFaults } from './axe.ts';
import { launchChromium } from './chromium.ts';
import { pictureFile } from './screens.ts';
import { choose, look, press, seatAt, tabTo, type, until, untilPhase, untilText, type Seat } from './seat.ts';
import { faults } from './faults.ts';
import { holdOnce, keys, steadyEye, sweep, untilFound, written } from './sweeping.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';
import { practiceBand } from './underWay.ts';

const kit = {
  bodies: [{ ...newBody('b', 'Velde M1', moment(1)), zoomStore: 'two' as const }],
  lenses: [
    {
      ...newLens('l', 'Orrin 24\u201370 f/2.8', moment(1)),
      focal: { from: millimetres(24), to: millimetres(70) },
      widest: { from: 2.8, to: 2.8 },
    },
  ],
  converters: [newConverter('c', 'Orrin 1.4\u00d7', 1.4, moment(1))],
  situations: [],
};
const settings = { ...USUAL_SETTINGS, sound: false, manner: { ...USUAL_SETTINGS.manner, care: 'quick', holdTime: seconds(3) } };

/** One practice camera for each situation of the plan, in its order: none of their bands runs off the scale. */
const bands = [11, 12, 13, 14, 15, 16, 17, 18, 19, 20]
  .map((seed) => practiceBand(seed))
  .filter(({ low, high }) => low > -16 && high < 16)
  .slice(0, 5);

async function measureNext(seat: Seat, band: { low: number; high: number }): Promise<void> {
  await choose(seat, 'Measure the next');
  await sweep(seat, steadyEye(band.low, band.high), keys);
  await accept(seat);
}

async function accept(seat: Seat): Promise<void> {
  await press(seat, 'a');
  await untilFound(seat);
  await until(seat, 'the progress, shown and said', ({ announcement, text }) => announcement.includes('measured') && text.includes(announcement));
  await choose(seat, 'Go on with the plan');
  await untilText(seat, 'See the plan');
  await choose(seat, 'See the plan');
  await until(seat, 'the plan', ({ screen }) => screen === 'plan');
}

test('a whole zoom, told by keys from the bands of practice cameras, is picked up after a kill and ends in what to enter, on paper too', async () => {
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  const first = await launchChromium({ profile });
  await first.worker.evaluate((all) => chrome.storage.local.set(all), { version: 3, kit, settings } as Record<string, unknown>);
  let page = await first.openTab();
  await page.setViewport({ width: 360, height: 700 });
  let seat = seatAt(page);
  await until(seat, 'the start', ({ screen }) => screen === 'start');
  await choose(seat, 'Plan');
  await untilText(seat, 'Make the plan');
  await choose(seat, 'Make the plan');
  await untilText(seat, 'Choose at least one lens.');
  await tabTo(seat, 'Orrin 24\u201370 f/2.8');
  await press(seat, ' ');
  await tabTo(seat, 'Distances, m');
  await type(seat, '1.5 8');
  await choose(seat, 'Make the plan');
  await untilText(seat, '0 of 4 measured');

  await measureNext(seat, bands[0]!);
  await untilText(seat, '1 of 4 measured');
  expect(await faults(page, 'plan-under-way')).toEqual([]);
  await choose(seat, 'Measure the next');
  const { next } = await holdOnce(seat, steadyEye(bands[1]!.low, bands[1]!.high), keys);
  await first.kill();

  const chromium = await launchChromium({ profile });
  onTestFinished(chromium.close);
  page = await chromium.openTab();
  await page.setViewport({ width: 360, height: 700 });
  seat = seatAt(page);
  await untilPhase(seat, 'dialling', 'offered');
  expect((await until(seat, 'the hold', ({ holds }) => holds.length > 0)).holds).toEqual(next.holds);
  await sweep(seat, steadyEye(bands[1]!.low, bands[1]!.high), keys);
  await accept(seat);
  await untilText(seat, '2 of 4 measured');
  await measureNext(seat, bands[2]!);
  await measureNext(seat, bands[3]!);
  await untilText(seat, '4 of 4 measured. The plan is done.');
  expect(await faults(page, 'plan-done')).toEqual([]);

  await choose(seat, 'Make a new plan');
  await tabTo(seat, 'Orrin 24\u201370 f/2.8');
  await press(seat, ' ');
  await tabTo(seat, 'Orrin 1.4\u00d7');
  await press(seat, ' ');
  await tabTo(seat, 'Both ends');
  await press(seat, 'ArrowUp');
  await tabTo(seat, 'Distances, m');
  await type(seat, '8');
  await choose(seat, 'Make the plan');
  const { text } = await untilText(seat, '0 of 2 measured');
  const again = (await sweptAt(page, 70, 8000))!;
  const nexts = [again, bands[4]!];
  for (const band of /Next: [^,]* with /.test(text) ? nexts.toReversed() : nexts) await measureNext(seat, band);
  await untilText(seat, '2 of 2 measured');

  await tabTo(seat, 'What to enter for Orrin 24\u201370 f/2.8, 70 mm at 8 m, Velde M1');
  await press(seat, 'Enter');
  await untilText(seat, 'With Orrin 1.4\u00d7');
  const entered = (await look(seat)).text;
  expect(entered).toContain(`Wide, 24 mm: ${written(await brute(page, 24))}`);
  expect(entered).toContain(`Tele, 70 mm: ${written(await brute(page, 70))}`);
  await choose(seat, 'How it stands in each band');
  expect(await faults(page, 'entering')).toEqual([]);

  const [situation] = await page.evaluate(async () => {
    const { kit: stored } = await chrome.storage.local.get('kit');
    return (stored as { situations: { id: string }[] }).situations.map(({ id }) => id);
  });
  const paper = await chromium.openTab(`entering.html#of=${situation}`, { width: 700, height: 900 });
  await paper.waitForSelector('table');
  expect(await accessibilityFaults(paper)).toEqual([]);
  expect(await paper.evaluate(() => document.body.textContent)).toMatch(/What it rests on.*24\smm at 1\.5\sm: band from/s);
  const file = pictureFile('entering').replace(/png$/, 'pdf');
  await paper.pdf({ path: file, preferCSSPageSize: true });
  const [, across, down] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(readFileSync(file, 'latin1')) ?? [];
  expect([Number(across), Number(down)].map(Math.round)).toEqual([595, 842]);
}, 240_000);

type Swept = { readonly subject: LogRecord['subject']; readonly low: number; readonly high: number; readonly centre: number };

const records = (page: Page): Promise<Swept[]> =>
  page.evaluate(async () =>
    Object.entries(await chrome.storage.local.get(null))
      .flatMap(([key, value]) => {
        if (!key.startsWith('record:')) return [];
        const { subject, outcome, finished } = value as LogRecord;
        return outcome.found === 'band' ? [{ subject, low: outcome.low, high: outcome.high, centre: outcome.centre, finished }] : [];
      })
      .sort((a, b) => a.finished - b.finished),
  );

/** The latest sweep of the bare lens there. */
const sweptAt = async (page: Page, focalLength: number, distance: number): Promise<Swept | undefined> =>
  (await records(page)).findLast(({ subject }) => subject.focalLength === focalLength && subject.distance === distance && !subject.lens.includes(' with '));

/** The value with the smallest worst share, by trying all. */
async function brute(page: Page, focalLength: number): Promise<number> {
  const both = [await sweptAt(page, focalLength, 1500), await sweptAt(page, focalLength, 8000)];
  const costs = Array.from({ length: 41 }, (_, at) => at - 20).map((value) => {
    const shares = both.map((one) => (one ? Math.abs(value - one.centre) / ((one.high - one.low + 1) / 2) : NaN));
    const errors = both.map((one) => (one ? Math.abs(value - one.centre) : NaN));
    return { value, cost: Math.max(...shares) + 1e-4 * (errors[0]! + errors[1]!) + 1e-7 * Math.abs(value) };
  });
  return costs.reduce((best, one) => (one.cost < best.cost ? one : best)).value;
}

// From a file of 24 megapixels to its figures, in the worker of a real Chromium and a real Firefox, over the time the same browser takes to
// decode the same file in the same run: a ratio, so that a slow machine changes nothing.
import type { Page } from 'puppeteer-core';
import { TRUE_SIZE } from '../../../src/optics/print/printCheck.ts';
import type { ToWorker } from '../../../src/platform/pictures/bridge.ts';
import { launchChromium } from '../../e2e/chromium.ts';
import { launchFirefox } from '../../e2e/firefox.ts';
import { pngFile } from '../../pngPixels.ts';
import { libraryWith } from '../../logbook/libraryWith.ts';
import { RIG_SENSOR, rigPicture } from '../../photographs/rigPicture.ts';
import { most, shown, type Family, type Figure } from '../figure.ts';
import { keysMeanwhile } from './keysMeanwhile.ts';

const ROUNDS = 8;
/** The rig's picture in the middle of 24 megapixels; the sensor grows along. */
const FRAME = { width: 4000, height: 6000 };

interface Taken {
  /** Milliseconds: decoding alone, and from the file to the figures, with what the worker spent on its parts. */
  readonly decoding: number;
  readonly whole: number;
  readonly parts: Readonly<Record<string, number>>;
  /** What came out, so that a quick failure is no success. */
  readonly found: string;
}

export const readingTime: Family = {
  name: 'reading time',
  needs: ['chromium', 'firefox'],
  run: readingTimeFigures,
};

async function readingTimeFigures(): Promise<Figure[]> {
  const rig = rigPicture(20);
  const kit = libraryWith({
    bodies: [{ id: 'b', sensor: { width: (RIG_SENSOR.width * FRAME.height) / rig.height, height: (RIG_SENSOR.height * FRAME.width) / rig.width } }],
    lenses: [{ id: 'l', widest: { from: 1.8, to: 1.8 } }],
  }).kit;
  const about: Omit<ToWorker, 'file'> = { east: 0, kit, situation: 's', printed: TRUE_SIZE, practice: null };
  const wanted = { png: pngFile(rig).toString('base64'), about: JSON.stringify(about), frame: FRAME, rounds: ROUNDS };
  const figuresIn = async (browser: string, page: Page): Promise<Figure[]> => [
    ...figuresOf(browser, await page.evaluate(timeReading, wanted)),
    ...(await keysMeanwhile(browser, page)),
  ];
  const chromium = await launchChromium();
  const inChromium = await chromium
    .openTab()
    .then((page) => figuresIn('Chromium', page))
    .finally(chromium.close);
  const firefox = await launchFirefox();
  const inFirefox = await firefox
    .openTab('main')
    .then((page) => figuresIn('Firefox', page))
    .finally(firefox.close);
  return [...inChromium, ...inFirefox];
}

/** The least of the rounds: what it takes when nothing else runs. */
function figuresOf(browser: string, taken: readonly Taken[]): Figure[] {
  const least = (of: (one: Taken) => number) => Math.min(...taken.map(of));
  return [
    most(`${browser}: 24 megapixels from file to figures, times the decoding alone`, least(({ whole }) => whole) / least(({ decoding }) => decoding), 2),
    shown(
      `${browser}: decoding alone, ms`,
      least(({ decoding }) => decoding),
    ),
    ...Object.keys(taken[0]?.parts ?? {}).map((part) =>
      shown(
        `${browser}: ${part}, ms`,
        least(({ parts }) => parts[part] ?? NaN),
      ),
    ),
    most(`${browser}: pictures not measured`, taken.filter(({ found }) => found !== 'measured').length, 0),
  ];
}

/** Runs in a page of the extension. */
async function timeReading(wanted: { png: string; about: string; frame: { width: number; height: number }; rounds: number }): Promise<Taken[]> {
  const { width, height } = wanted.frame;
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('There is no canvas.');
  // Grain, so that the file is as hard to decode as a photograph.
  const grain = new ImageData(512, 512);
  for (let at = 0, seed = 1; at < grain.data.length; at += 4) {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    const level = 150 + 20 * Math.sin(at / 9000) + ((seed >> 16) % 24);
    grain.data.set([level, level - 3, level - 9, 255], at);
  }
  const tile = new OffscreenCanvas(512, 512);
  tile.getContext('2d')?.putImageData(grain, 0, 0);
  for (let y = 0; y < height; y += 512) for (let x = 0; x < width; x += 512) context.drawImage(tile, x, y);
  const rig = await createImageBitmap(new Blob([Uint8Array.from(atob(wanted.png), (sign) => sign.charCodeAt(0))]));
  context.drawImage(rig, (width - rig.width) >> 1, (height - rig.height) >> 1);
  const written = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.92 });
  // Some canvases write a colour profile (the segments of kind 0xe2), a camera set to sRGB does not.
  const drawn = new Uint8Array(await written.arrayBuffer());
  const kept: Blob[] = [written.slice(0, 2)];
  let at = 2;
  while (drawn[at + 1] !== 0xda) {
    const end = at + 2 + drawn[at + 2]! * 256 + drawn[at + 3]!;
    if (drawn[at + 1] !== 0xe2) kept.push(written.slice(at, end));
    at = end;
  }
  // In one piece: Firefox does not decode a picture whose first piece is too short to be told by.
  const whole = await new Blob([...kept, written.slice(at)]).arrayBuffer();
  const file = new File([whole], 'large.jpg', { type: 'image/jpeg' });

  const taken: Taken[] = [];
  for (let round = 0; round <= wanted.rounds; round++) {
    const before = performance.now();
    (await createImageBitmap(file)).close();
    const decoding = performance.now() - before;
    const worker = new Worker(new URL('pictureWorker.js', location.href), { type: 'module' });
    await new Promise((go) => setTimeout(go, 300));
    const began = performance.now();
    const parts: Record<string, number> = {};
    let [stage, since] = ['starting', began];
    worker.postMessage({ file, ...(JSON.parse(wanted.about) as Omit<ToWorker, 'file'>) }, []);
    const found = await new Promise<string>((done) => {
      worker.addEventListener('message', ({ data }: MessageEvent) => {
        parts[stage] = performance.now() - since;
        [stage, since] = [data.stage, performance.now()];
        if (data.tells !== 'end') return;
        const { ok, value, fault } = data.picture;
        done(!ok ? JSON.stringify(fault) : value.reading.focus.ok ? 'measured' : JSON.stringify([value.reading.target.fault, value.reading.focus.fault]));
      });
    });
    // The first reading compiles the worker's code, and reads it.
    if (round > 0) taken.push({ decoding, whole: performance.now() - began, parts, found });
    worker.terminate();
  }
  return taken;
}

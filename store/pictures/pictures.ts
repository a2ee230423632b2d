// All pictures of the listing, in a folder for each language: of every state at the size of a screenshot, and the tiles.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import type { Language } from '../../src/language.ts';
import { look } from '../../tests/e2e/seat.ts';
import { captionsIn } from './captions.ts';
import { frameOf, largerWidth, panelHeight, SCREENSHOT, TILES, type Format, type Taken } from './frame.ts';
import { largerPicture, openPanel, panelPicture, settled, wear, type Opened } from './panelPictures.ts';
import { STATES, type State } from './states.ts';

/** What the tiles show. */
const ON_TILES: State['name'] = 'outcome';

/** A busy machine is slow. */
const TRIES = 4;

interface Made {
  readonly name: string;
  readonly of: State['name'];
  readonly format: Format;
}

export const MADE: readonly Made[] = [
  ...STATES.map(({ name }, index) => ({ name: `${index + 1}-${name}`, of: name, format: SCREENSHOT })),
  ...TILES.map((format) => ({ name: `tile-${format.width}x${format.height}`, of: ON_TILES, format })),
];

/** Paths of the files. */
export async function makePictures(folder: string, languages: readonly Language[]): Promise<string[]> {
  const opened = await openPanel();
  try {
    const paths: string[] = [];
    for (const state of STATES.toSorted((one, other) => Number(one.records ?? false) - Number(other.records ?? false))) {
      if (!state.passing) {
        await wear(opened, 'en', state.theme);
        await state.come(opened);
      }
      for (const language of languages) paths.push(...(await inLanguage(opened, state, language, join(folder, language))));
    }
    return paths;
  } finally {
    await opened.chromium.close();
  }
}

async function inLanguage(opened: Opened, state: State, language: Language, folder: string): Promise<string[]> {
  await mkdir(folder, { recursive: true });
  const sentence = captionsIn(language).get(state.name);
  if (sentence === undefined) throw new Error(`store/listing/${language}.md has no sentence for the picture “${state.name}”.`);
  await wear(opened, language, state.theme);
  const paths: string[] = [];
  for (const { name, format } of MADE.filter((one) => one.of === state.name)) {
    const taken = await takenOf(opened, state, language, format);
    const path = join(folder, `${name}.png`);
    await writeFile(path, await framed(opened, format, frameOf(format, { language, state, sentence, ...taken }), `${language}, ${name}`));
    paths.push(path);
  }
  return paths;
}

/** Taken again where the time ran out meanwhile. */
async function takenOf(opened: Opened, state: State, language: Language, format: Format): Promise<Taken> {
  for (let tries = 0; tries < TRIES; tries++) {
    if (state.passing) await state.come(opened);
    await settled(opened.panel, language);
    await state.atLast?.(opened);
    const panel = await panelPicture(opened.panel, state, panelHeight(format), format.scale);
    const larger = await largerPicture(opened.panel, state, largerWidth(format));
    if (!state.passing || (await look(opened.seat)).phase === state.passing) return { panel, larger };
  }
  throw new Error(`The picture “${state.name}” is over each time before it is taken.`);
}

async function framed({ chromium }: Opened, { width, height }: Format, html: string, what: string): Promise<Uint8Array> {
  const page: Page = await chromium.browser.newPage();
  await page.setViewport({ width, height, deviceScaleFactor: 1 });
  await page.setContent(html);
  await page.evaluate(() => Promise.all(Array.from(document.images, (one) => one.decode())));
  const isCut = await page.evaluate(() => {
    const told = document.querySelector('.told');
    return told === null || told.scrollHeight > told.clientHeight || told.scrollWidth > told.clientWidth;
  });
  if (isCut) throw new Error(`${what}: the sentence and what is shown larger do not fit.`);
  const picture = await page.screenshot();
  await page.close();
  return picture;
}

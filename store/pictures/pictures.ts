// All pictures of the listing, in a folder for each language: of every state at the size of a screenshot, and the tiles.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import type { Language } from '../../src/language.ts';
import { captionsIn } from './captions.ts';
import { frameOf, largerWidth, panelHeight, SCALE, SCREENSHOT, TILES, type Format } from './frame.ts';
import { largerPicture, openPanel, panelPicture, settled, wear, type Opened } from './panelPictures.ts';
import { STATES, type State } from './states.ts';

/** What the tiles show. */
const ON_TILES: State['name'] = 'outcome';

interface Made {
  readonly name: string;
  readonly format: Format;
}

export const MADE: readonly Made[] = [
  ...STATES.map(({ name }, index) => ({ name: `${index + 1}-${name}`, format: SCREENSHOT })),
  ...TILES.map((format) => ({ name: format.name, format })),
];

/** Paths of the files. A sweep that is finished changes the logbook, so it comes last. */
export async function makePictures(folder: string, languages: readonly Language[]): Promise<string[]> {
  const opened = await openPanel();
  try {
    const paths: string[] = [];
    for (const state of STATES.toSorted((one, other) => Number(one.name === ON_TILES) - Number(other.name === ON_TILES))) {
      if (!state.anew) {
        await wear(opened, 'en', state.theme);
        await state.come(opened);
      }
      for (const language of languages) {
        await wear(opened, language, state.theme);
        if (state.anew) await state.come(opened);
        await settled(opened.panel, language);
        await state.atLast?.(opened);
        paths.push(...(await picturesOf(opened, state, language, join(folder, language))));
      }
    }
    return paths;
  } finally {
    await opened.chromium.close();
  }
}

async function picturesOf(opened: Opened, state: State, language: Language, folder: string): Promise<string[]> {
  await mkdir(folder, { recursive: true });
  const sentence = captionsIn(language).get(state.name);
  if (sentence === undefined) throw new Error(`store/listing/${language}.md has no sentence for the picture “${state.name}”.`);
  const made: Made[] = [
    { name: `${STATES.indexOf(state) + 1}-${state.name}`, format: SCREENSHOT },
    ...(state.name === ON_TILES ? TILES.map((format) => ({ name: format.name, format })) : []),
  ];
  const paths: string[] = [];
  for (const { name, format } of made) {
    const panel = await panelPicture(opened.panel, state, panelHeight(format), SCALE);
    const larger = await largerPicture(opened.panel, state, largerWidth(format));
    const path = join(folder, `${name}.png`);
    await writeFile(
      path,
      await framed(
        opened,
        format,
        frameOf(format, { language, theme: state.theme, sentence, panel, larger, on: state.larger.on ?? 'ground' }),
        `${language}, ${name}`,
      ),
    );
    paths.push(path);
  }
  return paths;
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

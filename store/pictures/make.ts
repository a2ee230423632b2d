// `npm run store-pictures`: what a store shows of the extension, made from the real panel. They are made anew for a version, so they lie in dist.
// Only in some languages: name them, `npm run store-pictures -- de ja`.
import { cp, mkdir, rm } from 'node:fs/promises';
import { LANGUAGES } from '../../src/language.ts';
import { makeReady } from '../../tests/programs/ready.ts';
import { makePictures } from './pictures.ts';

const FOLDER = 'dist/store';

makeReady(['chromium', 'a Japanese font']);
await rm(FOLDER, { recursive: true, force: true });
await mkdir(FOLDER, { recursive: true });
const named = process.argv.slice(2);
const made = await makePictures(
  FOLDER,
  LANGUAGES.filter((language) => named.length === 0 || named.includes(language)),
);
await cp('icons/128.png', `${FOLDER}/icon-128.png`);
console.log([...made, `${FOLDER}/icon-128.png`].toSorted().join('\n'));

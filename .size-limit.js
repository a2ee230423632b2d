// What the panel may weigh. The build tells which of its scripts are loaded at once, to show it and to run a sweep.
import { readFileSync } from 'node:fs';

const { atOnce, onDemand, listening, languages } = JSON.parse(readFileSync('dist/chromium.json', 'utf8'));

// All script grew from 215 to 223 kB when every sentence moved into the catalogue, an area of it read with the screen that shows
// it, while what is loaded at once fell from 40 to 23: hence the limits of today.
// Every screen but the first is read only when it is opened. What moves a sweep, with all that is judged after a verdict (belief,
// suggestion, a moved focus, troubles, a width carried over), comes right after the first screen, with what is stored.
// On demand, in kB: photographs with the check and the bracket 13, what keeps and shows them 6, practice pictures and the way through
// hundreds of them 5; the rig drawn and the drawings of the walk 8; the rooms of a situation, the search of the settings and the help of
// the moment 6; the glance, the drift, the film of a replay and empty screens 9; the far view and the themes 2; a focus that stays 0.3:
// hence 280. Five areas of the pages in tabs, which the panel never reads, came into the catalogue with the languages, and a room of the settings
// for them: 285. Tables parted by commas or semicolons, and what is told of a stray quote: 286. What Sweepbook is, the report of a fault, the
// reminder of a backup and the page after the install: 291. A large logbook read, written and brought in part by part, and put back where that was
// broken off: 294. Nothing called saved before it is on disk, and what is told drawn anew in a language that is changed to: 296. Taught words in two places: 297. What reads a picture is none of the panel's script: the worker loads it when the first is brought in. Nor is the practice
// camera that takes one, which whoever practises loads.
// What is reckoned for every pixel is written out, which reads a picture in two thirds of the time for 0.2 kB: hence 28.5.
// The background answers the address bar in every language, and the browser lets it read nothing on demand: 42, of
// which Japanese, whose readings it needs to find a word, takes 9.
// Two themes for a dark studio with controls of their own, the far view and the drawings brought the style from 6.1 to 8.6; how far a long work is, and words parted
// at a hyphen in every language, to 9.02.
// A language is read in two steps: what a first sweep takes, with the panel; the rest area by area, with the screens. All that is said in
// one is about as much text as a long chapter, which no packing brings below 60 kB; Japanese takes the most, 78.
const ofLanguage = (language, { words, heard, firstSweep }) => [
  { name: `${language}, what a first sweep says`, path: firstSweep, gzip: true, limit: '27 kB' },
  { name: `${language}, all that is said`, path: words, gzip: true, limit: '79 kB' },
  { name: `${language}, how it is heard`, path: heard, gzip: true, limit: '9.5 kB' },
];

export default [
  { name: 'panel, script loaded at once', path: atOnce, gzip: true, limit: '40 kB' },
  { name: 'panel, all its script', path: [...atOnce, ...onDemand, ...languages.en.words], gzip: true, limit: '297 kB' },
  { name: 'panel, what listening adds', path: [...listening, ...languages.en.heard, 'dist/chromium/sampler.js'], gzip: true, limit: '64 kB' },
  ...Object.entries(languages).flatMap(([language, parts]) => (language === 'en' ? [] : ofLanguage(language, parts))),
  { name: 'what reads pictures', path: 'dist/chromium/pictureWorker.js', gzip: true, limit: '28.5 kB' },
  { name: 'what takes practice pictures', path: 'dist/chromium/practiceWorker.js', gzip: true, limit: '12 kB' },
  { name: 'panel, style', path: 'dist/chromium/panel.css', gzip: true, limit: '9.2 kB' },
  { name: 'background', path: 'dist/chromium/background.js', gzip: true, limit: '42 kB' },
];

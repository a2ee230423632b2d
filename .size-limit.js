// What the panel may weigh. The build tells which of its scripts are loaded at once, to show it and to run a sweep.
import { readFileSync } from 'node:fs';

const { atOnce, onDemand, listening } = JSON.parse(readFileSync('dist/chromium.json', 'utf8'));

// All script grew from 215 to 223 kB when every sentence moved into the catalogue, an area of it read with the screen that shows
// it, while what is loaded at once fell from 40 to 23: hence the limits of today.
// Every screen but the first is read only when it is opened. What moves a sweep, with all that is judged after a verdict (belief,
// suggestion, a moved focus, troubles, a width carried over), comes right after the first screen, with what is stored.
// The screen of photographs, its words and its way to the worker add 4 kB on demand, the check and the bracket with theirs another
// 9: hence 242 in place of 228. Keeping what they show (its schema with what is stored, keeping and erasing, its line of the history, the
// table and what to enter) adds 6; practice pictures, the length of the printed scale and the way through hundreds of pictures 4, and what
// tells a resized or cropped file 1: hence 255. What reads a picture is none of the panel's script: the worker loads it when the first is
// brought in. Nor is the practice camera that takes one, which whoever practises loads.
export default [
  { name: 'panel, script loaded at once', path: atOnce, gzip: true, limit: '40 kB' },
  { name: 'panel, all its script', path: [...atOnce, ...onDemand], gzip: true, limit: '255 kB' },
  { name: 'panel, what listening adds', path: [...listening, 'dist/chromium/sampler.js'], gzip: true, limit: '64 kB' },
  { name: 'what reads pictures', path: 'dist/chromium/pictureWorker.js', gzip: true, limit: '28 kB' },
  { name: 'what takes practice pictures', path: 'dist/chromium/practiceWorker.js', gzip: true, limit: '12 kB' },
  { name: 'panel, style', path: 'dist/chromium/panel.css', gzip: true, limit: '8 kB' },
  { name: 'background', path: 'dist/chromium/background.js', gzip: true, limit: '16 kB' },
];

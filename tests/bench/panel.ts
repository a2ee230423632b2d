// What the panel weighs: bytes over the wire.
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Loading } from '../../manifest/loading.ts';
import { most, shown, type Family } from './figure.ts';

export const panel: Family = {
  name: 'panel',
  run() {
    const { first, atOnce, onDemand } = JSON.parse(readFileSync('dist/chromium.json', 'utf8')) as Loading;
    return Promise.resolve([
      most('panel script loaded at once, kB gzip', kilobytes(atOnce), 40),
      shown('of it before anything is drawn, kB gzip', kilobytes(first)),
      shown('panel script with all that is loaded on demand, kB gzip', kilobytes([...atOnce, ...onDemand])),
      shown('panel style, kB gzip', kilobytes(['dist/chromium/panel.css'])),
    ]);
  },
};

const kilobytes = (files: readonly string[]): number => files.reduce((sum, file) => sum + gzipSync(readFileSync(file), { level: 9 }).length, 0) / 1000;

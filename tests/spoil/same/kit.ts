// Changes of src/kit from which nothing follows, and why.
import type { Same } from './same.ts';

export const KIT: readonly Same[] = [
  {
    file: 'src/kit/photograph/written.ts',
    line: 'density === undefined || density.under === 0',
    after: '(density === undefined)',
    why: 'A density over nought has no end, by which no side is long enough for a sensor.',
  },
  {
    file: 'src/kit/photograph/written.ts',
    line: 'if (unit === undefined || !(across > 0 && down > 0)',
    after: '(unit === undefined)',
    why: 'Of no density or one below nought, the sides are endless or below nought, and refused for their size.',
  },
];

// English: how carefully and in which order. The figures are those of simulated sweeps on a range of 41 corrections.
import type { MannerWords } from '../mannerWords.ts';

export const words: MannerWords = {
  care: 'Care',
  cares: {
    quick: { label: 'Quick', note: 'Ends when the centre is sure to within one step. About 9 holds, a minute and a half.' },
    standard: { label: 'Standard', note: 'Both ends of the band are seen as well. About 10 holds, under two minutes.' },
    thorough: { label: 'Thorough', note: 'The values at both ends are held again until they are sure. About 13 holds, two minutes.' },
  },
  order: 'Way of working',
  orders: {
    fewest: { label: 'Fewest holds', note: 'Each value is the one that tells most for your time.' },
    outward: { label: 'Step by step', note: 'One value after another, outward, so you can watch the light change. Takes more holds.' },
  },
};

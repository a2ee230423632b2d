// How true the hold timer is: from the press to the end tone by the audio clock, against the hold time, with the computer at rest
// and beside a page that burns every core of it.
import { USUAL_HOLD_TIME } from '../../../src/sweep/usualManner.ts';
import { most, shown, type Family, type Figure } from '../figure.ts';
import { timedHolds } from './timedHolds.ts';

const HOLDS = 20;
/** Seconds: more than this a person may notice. */
const TRUE_WITHIN = 0.05;
/** Of holds that may be further off: one of twenty, where the computer stands still for a moment. */
const SHARE = 0.05;

export const holdTimer: Family = {
  name: 'hold timer',
  needs: ['chromium'],
  async run({ tell }) {
    tell(`${HOLDS} holds of ${USUAL_HOLD_TIME} seconds at rest, and as many beside a page that keeps every core busy`);
    const rest = await figuresOf('at rest', false);
    return [...rest, ...(await figuresOf('every core busy', true))];
  },
};

async function figuresOf(when: string, burning: boolean): Promise<Figure[]> {
  const holds = await timedHolds(HOLDS, burning);
  const errors = holds.map(({ pressed, ends }) => Math.abs(ends - pressed - USUAL_HOLD_TIME)).toSorted((a, b) => a - b);
  const at = (share: number): number => errors[Math.min(errors.length - 1, Math.floor(errors.length * share))] ?? Infinity;
  return [
    shown(`${when}: median error of the end tone, ms`, at(0.5) * 1000),
    shown(`${when}: 95th percentile of the error, ms`, at(0.95) * 1000),
    shown(`${when}: longest wait until the panel was given the press, ms`, Math.max(...holds.map(({ waited }) => waited)) * 1000),
    most(`${when}: share of holds off by more than ${TRUE_WITHIN * 1000} ms`, errors.filter((error) => error > TRUE_WITHIN).length / errors.length, SHARE),
  ];
}

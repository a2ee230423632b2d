// Contract of the finding: a value to enter only where one was found and nothing is doubted.
import { expect, test } from 'vitest';
import { findingOf } from '../../src/sweep/finding.ts';
import { standing, toEnter } from '../../src/sweep/toEnter.ts';
import type { Outcome } from '../../src/sweep/end/outcome.ts';
import type { Trouble } from '../../src/sweep/trouble/trouble.ts';
import { steps } from '../../src/units.ts';
import { BAND } from '../bandOutcome.ts';
import { CARRIED } from '../carriedOutcome.ts';

const { tally, interval } = BAND;
const NOTHING: Outcome = { found: 'nothing', tally };
const PAST: Outcome = { found: 'past the limit', side: 'high', visible: steps(13), bound: 16.5, interval, tally };
const BEYOND: Outcome = { found: 'beyond the scale', side: 'above', tally };
const SERVICE: Outcome = { ...CARRIED, centre: 21.5, chosen: steps(20), service: true };
const GAP: Trouble = { trouble: 'hole in the band', bayesFactor: 300, from: steps(4), to: steps(5) };
const ARROWS: Trouble = { trouble: 'arrows contradict the lights', bayesFactor: 120, how: 'turned round' };
const MOVED = (seen: boolean): Trouble => ({ trouble: 'focus moved', bayesFactor: 40, afterHold: 4, seen });

test.each([
  ['a band', BAND, 'sure', 5],
  ['a width carried over', CARRIED, 'sure', 18],
  ['a centre off the scale whose nearest value holds', SERVICE, 'bounded', 20],
  ['a centre off the scale that no value reaches', { ...SERVICE, inside: false }, 'bounded', null],
  ['a band past the limit', PAST, 'bounded', null],
  ['a band beyond the scale', BEYOND, 'bounded', null],
  ['nothing that held', NOTHING, 'nothing', null],
] as const)('%s is %s with the value to enter that it has', (_, outcome, is, value) => {
  const finding = findingOf(outcome, []);
  expect([finding.is, toEnter(outcome, []), 'enter' in finding ? finding.enter : null]).toEqual([is, value, value]);
});

test.each([BAND, CARRIED, SERVICE, PAST, BEYOND, NOTHING])('while a trouble stands any outcome is doubtful, and gives no value to enter', (outcome) => {
  const finding = findingOf(outcome, [GAP, ARROWS]);
  expect(finding).toMatchObject({ is: 'doubtful', trouble: GAP, others: [ARROWS] });
  expect(toEnter(outcome, [GAP, ARROWS])).toBeNull();
});

test('a focus seen to have moved doubts nothing any more, for the holds before it are put aside; one that nobody looked at does', () => {
  expect(standing([MOVED(true)])).toEqual([]);
  expect(findingOf(BAND, [MOVED(true)]).is).toBe('sure');
  expect(findingOf(BAND, [MOVED(false)]).is).toBe('doubtful');
});

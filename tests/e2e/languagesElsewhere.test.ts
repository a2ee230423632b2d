// The same contract as in languages.test.ts, for what lies off the usual way: a sweep read from afar, what stands behind the microphone mark,
// photographs, and a plan.
import { expect, onTestFinished, test } from 'vitest';
import { setOut } from './languages/tour.ts';
import { storedShop } from './library/shop.ts';
import { murmuring } from './murmuring.ts';
import { farView } from './routes/farView.ts';
import { fullPlan } from './routes/fullPlan.ts';
import { photographs } from './routes/photographs.ts';
import { voiceSheet } from './routes/voiceSheet.ts';

test.for([
  ['a sweep from afar', farView, {}],
  ['the voice sheet and the sound check', voiceSheet, {}],
  ['photographs', photographs, storedShop(Date.now())],
  ['a plan from its form to the start', fullPlan, storedShop(Date.now())],
] as const)('%s', { timeout: 300_000 }, async ([, route, stored]) => {
  // There is a microphone, and nobody but the test allows it.
  const [fake = '', file = ''] = murmuring(onTestFinished);
  const tour = await setOut(stored, [fake, file]);
  await route(tour);
  expect(tour.faults).toEqual([]);
});

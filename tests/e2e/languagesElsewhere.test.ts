// Contract of what lies off the usual way, in every language (languages/contracts.ts): a sweep read from afar, what stands behind the
// microphone mark, photographs, and a plan.
import { onTestFinished } from 'vitest';
import { holdIn } from './languages/contracts.ts';
import { tourOfPanel } from './languages/tour.ts';
import { storedShop } from './library/shop.ts';
import { murmuring } from './murmuring.ts';
import { farView } from './routes/farView.ts';
import { fullPlan } from './routes/fullPlan.ts';
import { photographs } from './routes/photographs.ts';
import { voiceSheet } from './routes/voiceSheet.ts';

const stored = storedShop(Date.now());
// The voice sheet listens, with a microphone that nobody but its route allows.
const args = () => murmuring(onTestFinished).slice(0, 2);

holdIn([
  ['a sweep from afar', () => tourOfPanel(farView)],
  ['the voice sheet and the sound check', () => tourOfPanel(voiceSheet, { args })],
  ['photographs', () => tourOfPanel(photographs, { stored })],
  ['a plan from its form to the start', () => tourOfPanel(fullPlan, { stored })],
]);

// Sweeps that are under way when the panel opens, as they lie in the browser's storage: for tests that need a practice
// camera whose band they know, or a phase that takes long to reach.
import type { Journal } from '../../src/sweep/event.ts';
import type { Oddity } from '../../src/sweep/oddity.ts';
import { USUAL_MANNER } from '../../src/sweep/manner.ts';
import type { Plan } from '../../src/sweep/plan.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import type { Phase } from '../../src/sweep/state.ts';
import { cameraOf } from '../../src/practice/cameras.ts';
import { millimetres, moment, seconds } from '../../src/units.ts';
import { inPhase, opened } from '../sweep/staged.ts';
import { practised } from '../sweep/trouble/practised.ts';
import type { Chromium } from './chromium.ts';

const subject = {
  situation: 'practice',
  body: 'Practice camera',
  lens: 'Practice lens',
  focalLength: millimetres(50),
  distance: millimetres(2500),
};

/** A sweep of the practice camera of this seed that has just been opened, with holds of three seconds. */
export const practiceSweep = (seed: number, more: Omit<Drawn, 'seed'> = {}): Journal => practising({ seed, ...more });

/** The same with something wrong. */
export const oddSweep = (seed: number, oddity: Oddity): Journal => practising({ seed, oddity });

const practising = (practice: Plan['practice']): Journal => [
  {
    ...opened({ subject, scale: USUAL_SCALE, arrows: 'absent', practice, manner: { ...USUAL_MANNER, holdTime: seconds(3) } }),
    at: moment(Date.now()),
  },
];

type Drawn = NonNullable<Plan['practice']>;
/** A sweep offered to finish whose holds, set by the person one by one, show a gap in the band. */
export const gapSweep = (): Journal => [...practised(3, 'hole in the band', { own: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16] }).state.journal];

/** The values between the true ends of its band. */
export function practiceBand(seed: number, more: Omit<Drawn, 'seed'> = {}): { low: number; high: number } {
  const { low, high } = cameraOf({ seed, ...more }, USUAL_SCALE, 'absent');
  return { low: Math.ceil(low), high: Math.floor(high) };
}

/** A sweep of invented kit that stands in this phase. */
export const sweepIn = (phase: Phase['name']): Journal => [...inPhase(phase).journal];

export async function putUnderWay({ worker }: Chromium, live: Journal): Promise<void> {
  await worker.evaluate((journal) => chrome.storage.local.set({ live: journal }), [...live]);
}

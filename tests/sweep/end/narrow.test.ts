// Contract of bands narrower than a step, in which no value holds more often than not: the sweep still comes to an end, and
// what it says lies where the band is.
import { describe, expect, test } from 'vitest';
import { halfPress, type PracticeCamera } from '../../../src/practice/camera.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { openSweep } from '../../../src/sweep/opening.ts';
import type { Care } from '../../../src/sweep/care.ts';
import { USUAL_HOLD_TIME, USUAL_MANNER } from '../../../src/sweep/usualManner.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import type { Scale } from '../../../src/sweep/scale.ts';
import { transition } from '../../../src/sweep/transition.ts';
import type { ArrowDisplay } from '../../../src/sweep/verdict.ts';
import { moment, steps } from '../../../src/units.ts';
import { later, opened } from '../staged.ts';

const PATIENCE = 40;
/** Short, so that many sweeps take little time. */
const SCALE: Scale = { min: steps(-5), max: steps(5), step: 1 };

function sweep(seed: number, care: Care, arrows: ArrowDisplay): { phase: SweepState['phase']['name']; off: number } {
  const random = seededRandom(seed);
  const centre = SCALE.max * (random() - 0.5);
  const camera: PracticeCamera = { low: centre - 0.2, high: centre + 0.2, softLow: 0.4, softHigh: 0.4, lateUpTo: 1, darkFrom: 5, lapses: 0.02, arrows };
  let { state } = openSweep(opened({ scale: SCALE, arrows, manner: { ...USUAL_MANNER, care } }));
  while (state.phase.name === 'dialling' && state.holds.length < PATIENCE) {
    const { value } = state.phase.next;
    const at = later(state.holds.length * 12 + 1);
    state = transition(state, { did: 'began', at, value, by: 'key' }).state;
    const verdict = halfPress(camera, value, random);
    const after = moment(at + USUAL_HOLD_TIME * 1000);
    if (verdict.light === 'steady') state = transition(state, { did: 'ran', at: after }).state;
    state = transition(state, { did: 'judged', at: after, verdict, by: 'key', heard: null }).state;
  }
  const { phase } = state;
  const chosen = phase.name === 'offered' && phase.outcome.found === 'band' ? phase.outcome.chosen : null;
  return { phase: phase.name, off: chosen === null ? 0 : Math.abs(chosen - centre) };
}

describe.each(['absent', 'right-is-up'] as const)('arrows %s', { timeout: 60_000 }, (arrows) => {
  test.each(['quick', 'standard', 'thorough'] as const)('a sweep at %s care is offered its finish or asks about the focus', (care) => {
    for (let seed = 1; seed <= 10; seed++) {
      const { phase, off } = sweep(seed, care, arrows);
      expect({ seed, phase }).not.toMatchObject({ phase: 'dialling' });
      expect(off, `seed ${seed}`).toBeLessThanOrEqual(2);
    }
  });
});

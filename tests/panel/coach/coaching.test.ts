// Contract of the coaching: the two buttons before the first hold on a real camera, two holds in all, and never anyone twice.
import { expect, test } from 'vitest';
import { coachedNow } from '../../../src/panel/coach/coaching.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import { after, begin, inPhase, later } from '../../sweep/staged.ts';

const flicker = (state: SweepState, second: number): SweepState =>
  after(begin(state, second), { did: 'judged', at: later(second + 2), verdict: { light: 'flicker', arrows: 'none' }, by: 'key', heard: null });
const practising = (state: SweepState): SweepState => ({ ...state, plan: { ...state.plan, practice: { seed: 1 } } });

test('before the first hold the two buttons are shown with the four lights; then what happens now, phase by phase', () => {
  const first = inPhase('dialling');
  expect(coachedNow(first, { coached: 0 }, [])).toEqual({ shows: 'buttons', lights: true });
  expect(coachedNow(begin(first, 10), { coached: 0 }, [])).toEqual({ shows: 'phase', phase: 'holding', lights: true });
  expect(coachedNow(inPhase('judging'), { coached: 0 }, [])).toEqual({ shows: 'phase', phase: 'judging', lights: false });
  expect(coachedNow(flicker(first, 10), { coached: 1 }, [])).toEqual({ shows: 'phase', phase: 'dialling', lights: false });
});

test('after two holds, or with a sweep of a real camera in the logbook, nothing more is explained', () => {
  expect(coachedNow(inPhase('dialling'), { coached: 2 }, [])).toBeNull();
  expect(coachedNow(inPhase('dialling'), { coached: 0 }, [{ practice: false }])).toBeNull();
  expect(coachedNow(inPhase('dialling'), { coached: 0 }, [{ practice: true }])).not.toBeNull();
});

test('the practice camera has no button to mistake: it shows the four lights before the first verdict alone', () => {
  expect(coachedNow(practising(inPhase('dialling')), { coached: 0 }, [])).toEqual({ shows: 'lights' });
  expect(coachedNow(practising(inPhase('holding')), { coached: 0 }, [])).toBeNull();
  expect(coachedNow(practising(flicker(inPhase('dialling'), 10)), { coached: 0 }, [])).toBeNull();
});

test.each(['offered', 'paused', 'checking'] as const)('in %s nothing is explained', (phase) => {
  expect(coachedNow(inPhase(phase), { coached: 0 }, [])).toBeNull();
});

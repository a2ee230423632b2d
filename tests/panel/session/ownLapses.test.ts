// Contract of an own share of lapses: a sweep carries it in its plan only where the person said yes, and a plan without it
// means what it always meant.
import * as v from 'valibot';
import { expect, test } from 'vitest';
import { createLibrary } from '../../../src/panel/session/library.ts';
import { settled } from '../../../src/panel/session/settled.ts';
import { planFor } from '../../../src/panel/session/plan.ts';
import type { TrainingRound } from '../../../src/practice/training/round.ts';
import { USUAL_SETTINGS } from '../../../src/usualSettings.ts';
import { chancesOfIn } from '../../../src/sweep/belief/belief.ts';
import { openingBelief } from '../../../src/sweep/opening.ts';
import { Plan } from '../../../src/sweep/plan.ts';
import { moment } from '../../../src/units.ts';
import { PLAN } from '../fakeSession.ts';
import { DISK_AT_ONCE } from './diskAtOnce.ts';

const ROUND: TrainingRound = {
  at: moment(0),
  level: 2,
  holds: Array.from({ length: 10 }, (_, index) => ({ shown: 'steady', told: index === 0 ? 'late' : 'steady', level: 2 })),
};

function planned(own: boolean, rounds: number) {
  const library = createLibrary(DISK_AT_ONCE, settled);
  library.changeSettings({ training: { own, rounds: Array.from({ length: rounds }, () => ROUND) } });
  const plan = planFor({ with: 'practice', arrows: 'absent' }, library, () => 1, null);
  return plan.ok ? plan.value : null;
}

test('the plan carries the share measured only with a yes, and only after enough holds', () => {
  expect(planned(true, 4)?.lapse).toBeCloseTo(0.055, 6);
  expect(planned(false, 4)).not.toHaveProperty('lapse');
  expect(planned(true, 3)).not.toHaveProperty('lapse');
  expect(USUAL_SETTINGS.training.own).toBe(false);
});

test('a plan without a share opens the same belief as one of two in a hundred, and another share opens another', () => {
  const without = chancesOfIn(openingBelief(PLAN));
  expect(chancesOfIn(openingBelief({ ...PLAN, lapse: 0.02 }))).toEqual(without);
  expect(chancesOfIn(openingBelief({ ...PLAN, lapse: 0.08 }))).not.toEqual(without);
});

test.each([0, 0.004, 0.11, Number.NaN])('a stored plan with a share of %d is not believed', (lapse) => {
  expect(v.is(Plan, { ...PLAN, lapse })).toBe(false);
  expect(v.is(Plan, PLAN)).toBe(true);
});

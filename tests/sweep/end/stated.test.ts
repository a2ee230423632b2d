// Contract of what is stated: as modest as the belief of even lights; beside a spell of misjudged holds it holds both bands, in the odds
// of the two accounts.
import { expect, test } from 'vitest';
import { centreInterval, modest, openBelief, weigh, type Belief } from '../../../src/sweep/belief/belief.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import { withinOneStep } from '../../../src/sweep/end/confidence.ts';
import { statedOf } from '../../../src/sweep/end/stated.ts';
import { storiesOf, type Timed } from '../../../src/sweep/end/story.ts';
import { read } from '../../../src/sweep/verdict.ts';
import { moment, steps } from '../../../src/units.ts';
import { noiseFreeLight } from '../noiseFree.ts';

const OPEN = openBelief({ min: steps(-10), max: steps(10), step: 1 }, false, NO_MEMORY);

/** Holds of a band from -2 to 4, some of which were seen as another band would show. */
function seen(values: readonly number[], spoilt: (at: number) => boolean): { belief: Belief; holds: Timed[] } {
  let belief = OPEN;
  const holds = values.map((value, at) => {
    const reading = read(spoilt(at) ? noiseFreeLight(-9, -4, value) : noiseFreeLight(-2, 4, value), 'absent');
    const step = weigh(belief, steps(value), reading);
    belief = step.belief;
    return { value: steps(value), reading, predictive: step.predictive, began: moment(at * 10_000) };
  });
  return { belief, holds };
}

const VALUES = [0, 6, -6, 4, -3, 5, -2, -3, 3, 2];

test('where one band explains every hold, what is stated is the belief of even lights', () => {
  const { belief } = seen(VALUES, () => false);
  expect(statedOf(belief, [])).toEqual(modest(belief));
});

test('where two holds in a row hardly fit, the centre that the others tell of is likelier in what is stated', () => {
  const { belief, holds } = seen(VALUES, (at) => at >= 8);
  const stated = statedOf(belief, storiesOf(OPEN, holds));
  expect(stated.posterior.mass.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
  expect(withinOneStep(stated, steps(1))).toBeGreaterThan(withinOneStep(modest(belief), steps(1)) + 0.1);
  expect(centreInterval(stated).to).toBeGreaterThanOrEqual(1);
});

test('the odds of the two accounts are the shares they have in what is stated', () => {
  const { belief, holds } = seen(VALUES, (at) => at >= 8);
  const stories = storiesOf(OPEN, holds);
  const spell = stories.find(({ story }) => story.is === 'misjudged');
  if (!spell) throw new Error('no story');
  const share = spell.bayesFactor / (Math.max(1, stories[0]!.bayesFactor >= 20 ? stories[0]!.bayesFactor : 1) + spell.bayesFactor);
  const at = (value: number) => withinOneStep(statedOf(belief, stories), steps(value));
  const alone = (value: number) => withinOneStep({ model: belief.model, posterior: spell.bands }, steps(value));
  for (const value of [-2, 0, 1, 4]) {
    expect(at(value)).toBeCloseTo((1 - share) * withinOneStep(modest(belief), steps(value)) + share * alone(value), 9);
  }
});

// Contract of the other stories of a sweep: each is weighed against one band that stays, grows with holds that only it
// explains, and says where the band lies then.
import { expect, test } from 'vitest';
import { centreOf, openBelief, weigh } from '../../../src/sweep/belief/belief.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import { doubtedValues, retold, storiesOf, type Story, type Timed } from '../../../src/sweep/end/story.ts';
import { read, type Verdict } from '../../../src/sweep/verdict.ts';
import { moment, steps } from '../../../src/units.ts';
import { noiseFreeLight } from '../noiseFree.ts';

const belief = openBelief({ min: steps(-10), max: steps(10), step: 1 }, false, NO_MEMORY);
const BETWEEN = 10_000;

/** Holds ten seconds apart, of a band that may lie elsewhere at each. */
function holdsAt(values: readonly number[], lightAt: (value: number, at: number, way: number) => Verdict): Timed[] {
  let now = belief;
  return values.map((value, at) => {
    const reading = read(lightAt(value, at, Math.sign(value - (values[at - 1] ?? 0))), 'absent');
    const step = weigh(now, steps(value), reading);
    now = step.belief;
    return { value: steps(value), reading, predictive: step.predictive, began: moment(at * BETWEEN) };
  });
}

const of = (is: Story['is'], holds: readonly Timed[]) => storiesOf(belief, holds).find(({ story }) => story.is === is);
const STEADY: Verdict = { light: 'steady', arrows: 'none' };
const FLICKER: Verdict = { light: 'flicker', arrows: 'none' };

test('holds that one band explains tell no other story', () => {
  const holds = holdsAt([0, 6, -6, 5, -3, 4, -2, -3, 5], (value) => noiseFreeLight(-2, 4, value));
  expect(storiesOf(belief, holds).every(({ bayesFactor }) => bayesFactor < 1)).toBe(true);
});

test('two verdicts in a row that the others contradict are in doubt, until their values are held again', () => {
  const values = [0, 6, -6, 5, -3, 4, -2, 0, 1, -4];
  const spoilt = (value: number, at: number) => (at === 7 || at === 8 ? FLICKER : noiseFreeLight(-2, 4, value));
  const holds = holdsAt(values, spoilt);
  const told = of('misjudged', holds);
  expect(told?.story).toMatchObject({ from: 7, to: 8 });
  expect(told?.bayesFactor).toBeGreaterThan(4);
  if (told?.story.is !== 'misjudged') throw new Error('no story');
  expect(doubtedValues(holds, told.story)).toEqual([0, 1]);
  const again = holdsAt([...values, 0, 1, 0, 1], spoilt);
  const later = of('misjudged', again);
  expect(later?.bayesFactor).toBeGreaterThan(20);
  if (later?.story.is !== 'misjudged') throw new Error('no story');
  expect(doubtedValues(again, later.story)).toEqual([]);
  expect(centreOf(retold(belief, again, later.story)).mean).toBeCloseTo(1, 0);
});

test('a band that moves with time is told as a drift, and its centre is where it lies now', () => {
  const rate = 1.4;
  const drifted = (at: number) => (rate * at * BETWEEN) / 60_000;
  const values = [0, 6, -6, 4, -3, 5, -2, 4, 6, -1, 5, 7, 6, 0, 1, 7];
  const holds = holdsAt(values, (value, at) => noiseFreeLight(-3 + drifted(at), 3 + drifted(at), value));
  const [first] = storiesOf(belief, holds);
  expect(first?.story).toEqual({ is: 'drifting', rate });
  expect(first?.bayesFactor).toBeGreaterThan(20);
  if (!first) throw new Error('no story');
  const now = drifted(values.length - 1);
  expect(Math.abs(centreOf(retold(belief, holds, first.story)).mean - now)).toBeLessThan(0.75);
});

test('a band that lies elsewhere after turning up than after turning down is told as play, with the centre between', () => {
  const values = [0, 5, -5, 4, 3, -3, -4, 4, -4, 3, 5, -3, 5, 4, -5, -4, 3];
  const holds = holdsAt(values, (value, _, way) => noiseFreeLight(-3.5 + way, 3.5 + way, value));
  const [first] = storiesOf(belief, holds);
  expect(first?.story).toEqual({ is: 'play', size: 1 });
  expect(first?.bayesFactor).toBeGreaterThan(20);
  if (!first) throw new Error('no story');
  expect(Math.abs(centreOf(retold(belief, holds, first.story)).mean)).toBeLessThan(0.5);
});

test('too few holds, or none that held, tell no story', () => {
  expect(
    storiesOf(
      belief,
      holdsAt([0, 5, -5], () => STEADY),
    ),
  ).toEqual([]);
  expect(
    storiesOf(
      belief,
      holdsAt([0, 5, -5, 8, -8, 3, -3], () => FLICKER),
    ),
  ).toEqual([]);
});

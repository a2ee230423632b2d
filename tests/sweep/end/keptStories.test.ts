// The numbers of the stories that are told of the holds beside one band that stays, as they were: a focus that moved, one that moved and
// hides, holds that were misjudged, a band that drifts or has play; and what is stated of the centre then.
import { describe, expect, test } from 'vitest';
import { centreOf } from '../../../src/sweep/belief/belief.ts';
import { driftOf, movedBy, movesOf, product, quickLook, sum } from '../../../src/sweep/end/drift.ts';
import { statedOf } from '../../../src/sweep/end/stated.ts';
import { stillnessOf } from '../../../src/sweep/end/stillness.ts';
import { doubtedValues, retold, storiesOf, type Story } from '../../../src/sweep/end/story.ts';
import { COARSE, drawn, type Terms } from '../drawn.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { summed } from '../../kept/summed.ts';

const VALUES = [0, 5, -5, 3, -3, 4, -2, 1, 5, -4];
const SERIES: Readonly<Record<string, Terms>> = {
  still: { bandAt: () => [-3.5, 3.5], values: VALUES, wrong: 0 },
  'spoilt once or twice': { bandAt: () => [-3.5, 3.5], values: VALUES, wrong: 0.25 },
  'moved up': { bandAt: (hold) => (hold < 5 ? [-4.5, 1.5] : [-0.5, 5.5]), values: VALUES, wrong: 0 },
  'moved down': { bandAt: (hold) => (hold < 7 ? [-0.5, 5.5] : [-4.5, 0.5]), values: VALUES, wrong: 0 },
  'misjudged in a row': { bandAt: (hold) => (hold > 5 && hold < 9 ? [-9, -6] : [-2.5, 4.5]), values: VALUES, wrong: 0 },
  'drifting, with arrows': { arrows: 'right-is-up', bandAt: (hold) => [-4 + 0.4 * hold, 1 + 0.4 * hold], values: [...VALUES, 5, -1], wrong: 0 },
  'in strides of two': { scale: COARSE, bandAt: (hold) => (hold < 4 ? [1, 7] : [7, 13]), values: [4, 0, 8, 2, 6, 10, 12, 8], wrong: 0 },
  short: { bandAt: (hold) => (hold < 2 ? [-3.5, 0.5] : [1.5, 5.5]), values: [0, 1, 0, 2], wrong: 0 },
  six: { bandAt: (hold) => (hold < 3 ? [-3.5, 0.5] : [1.5, 5.5]), values: [0, 1, -3, 0, 2, 5], wrong: 0 },
};
const STORIES: readonly Story[] = [
  { is: 'misjudged', from: 1, to: 2 },
  { is: 'drifting', rate: 0.7 },
  { is: 'drifting', rate: -1.4 },
  { is: 'play', size: -0.5 },
  { is: 'play', size: 1 },
];

describe.each(Object.keys(SERIES))('a series %s', (name) => {
  const { opening, belief, holds } = drawn(60, SERIES[name]);

  test('may be of a focus that moved', () => {
    const drifts = [0, 1, 3, holds.length - 4, holds.length - 3, holds.length].map((trusted) => oneLine(driftOf(opening, holds, trusted)));
    const shorter = [4, 5, 6, 8].map((count) => oneLine(driftOf(opening, holds.slice(0, count), 0)));
    const hidden = [-2, 0, 1.5, 4].map((chosen) => oneLine(Object.values(stillnessOf(opening, holds, 0, chosen))));
    const trusted = [2, holds.length - 3, holds.length - 2].map((upTo) => oneLine(Object.values(stillnessOf(opening, holds, upTo, 0))));
    const look = quickLook(belief);
    const weights = holds.slice(0, 3).map((hold) => look.chances(hold, 1.5));
    const most = weights.reduce(product, look.start);
    const worth = oneLine([look.which.length, summed(look.which), summed(look.start), weights.map(summed), sum(most), look.worthy(most).length]);
    expect([drifts, shorter, hidden, trusted, worth]).toMatchSnapshot();
  });

  test('may be of another story', () => {
    const told = [holds, holds.slice(0, 6), holds.slice(0, 5)].map((some) => {
      const stories = storiesOf(opening, some);
      const stated = statedOf(belief, stories).posterior;
      const lines = stories.map(({ story, bayesFactor, bands }) =>
        oneLine([Object.values(story), bayesFactor, bands.which.length, summed(bands.mass), summed(bands.which)]),
      );
      return [...lines, oneLine([stated.which.length, summed(stated.mass)])];
    });
    const again = STORIES.map((story) => {
      const after = retold(opening, holds, story);
      return oneLine([Object.values(centreOf(after)), story.is === 'misjudged' ? doubtedValues(holds, story) : []]);
    });
    expect([told, again]).toMatchSnapshot();
  });
});

test.each(Object.keys(SERIES))('every story can be told of a series %s', (name) => {
  const { opening, holds } = drawn(60, SERIES[name]);
  expect(() => storiesOf(opening, holds)).not.toThrow();
  expect(() => [driftOf(opening, holds, 0), stillnessOf(opening, holds, 0, 0)]).not.toThrow();
});

test('what every moment of a move gives to the bands', () => {
  const { opening, holds } = drawn(60, SERIES['moved up']);
  const moves = movesOf(opening, holds, 2, holds.length - 3, [-3, 2]);
  const told: string[] = [];
  for (const shift of [-3, 2]) movedBy(moves, shift, (k, weight) => told.push(oneLine([shift, k, summed(weight)])));
  expect([told, oneLine([moves.bands.which.length, summed(moves.bands.which), moves.whole, summed(moves.still)])]).toMatchSnapshot();
});

// Contract of naming troubles: the odds from which each is named, which explains which, and what is told of it.
import { describe, expect, test } from 'vitest';
import { openBelief } from '../../../src/sweep/belief/belief.ts';
import type { Drift } from '../../../src/sweep/end/drift.ts';
import type { Story, Weighed } from '../../../src/sweep/end/story.ts';
import type { Hold } from '../../../src/sweep/hold.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import { troublesOf } from '../../../src/sweep/trouble/troublesOf.ts';
import { read } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';

const belief = openBelief({ min: steps(-10), max: steps(10), step: 1 }, false, NO_MEMORY);
const reading = read({ light: 'steady', arrows: 'none' }, 'absent');
const holds = [4, 2, 2, -1].map((value) => ({ value: steps(value), reading, predictive: 0.5 })) as readonly Partial<Hold>[] as readonly Hold[];
const weighed = (story: Story, bayesFactor: number): Weighed => ({ story, bayesFactor, bands: belief.posterior });
const drift = (bayesFactor: number): Drift => ({ bayesFactor, afterHold: 2 });
const DRIFTING: Story = { is: 'drifting', rate: -0.5 };
const PLAY: Story = { is: 'play', size: -3 };
const named = (focus: Drift | null, ...stories: readonly Weighed[]) => troublesOf(belief, holds, focus, stories).map(({ trouble }) => trouble);

describe('a trouble', () => {
  test('is named from odds of fifty, where it is a story of the holds', () => {
    expect([49.9, 50].map((odds) => named(null, weighed(DRIFTING, odds)))).toEqual([[], ['band drifts']]);
  });

  test('is a focus that moved whenever that is asked about', () => {
    expect(troublesOf(belief, holds, drift(9), [])).toEqual([{ trouble: 'focus moved', bayesFactor: 9, afterHold: 2, seen: false }]);
  });

  test('is explained by another that is more than ten times as likely', () => {
    expect(named(drift(8), weighed(PLAY, 80))).toEqual(['play', 'focus moved']);
    expect(named(drift(8), weighed(PLAY, 81))).toEqual(['play']);
    expect(named(drift(600), weighed(PLAY, 60), weighed(DRIFTING, 300))).toEqual(['focus moved', 'band drifts', 'play']);
    expect(named(drift(601), weighed(PLAY, 60))).toEqual(['focus moved']);
  });

  test('tells of the values misjudged, each once and in order, of the rate, and of how much play there is', () => {
    const told = (story: Story) => troublesOf(belief, holds, null, [weighed(story, 70)]);
    expect(told({ is: 'misjudged', from: 0, to: 2 })).toEqual([{ trouble: 'verdicts misjudged', bayesFactor: 70, values: [2, 4] }]);
    expect(told({ is: 'misjudged', from: 3, to: 3 })).toEqual([{ trouble: 'verdicts misjudged', bayesFactor: 70, values: [-1] }]);
    expect(told(DRIFTING)).toEqual([{ trouble: 'band drifts', bayesFactor: 70, rate: -0.5 }]);
    expect(told(PLAY)).toEqual([{ trouble: 'play', bayesFactor: 70, size: 3 }]);
  });

  test('is none before the first hold', () => {
    expect(troublesOf(belief, [], drift(100), [])).toEqual([]);
  });
});

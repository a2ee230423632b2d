// All troubles that the holds of a series show. It is asked after every hold: a true story is contradicted at odds of K to
// 1 at any time with a chance of at most 1 in K (Ville 1939, Étude critique de la notion de collectif), so the odds asked
// for are high; what they cost healthy sweeps, the bench says.
import type { Belief } from '../belief/belief.ts';
import type { Drift } from '../end/drift.ts';
import type { Weighed } from '../end/story.ts';
import type { Hold } from '../hold.ts';
import { arrowsAgainst } from './arrows.ts';
import { sameEverywhere } from './everywhere.ts';
import { holeIn } from './hole.ts';
import type { FocusMoved, OtherStory, Trouble } from './trouble.ts';

/** Odds from which a trouble is named. A question about the focus has its own. */
const NAMED = 100;
/** The same where the light never told one value from another: more holds would tell little more of it. */
const NAMED_EVERYWHERE = 50;
/** Of a story that is believed, and told with what it leaves. */
const NAMED_STORY = 50;
/** A story this much less likely than another is explained by it. */
const EXPLAINED = 10;

/** The likeliest first; `drift`: evidence that the focus moved, strong enough to ask. */
export function troublesOf(belief: Belief, holds: readonly Hold[], drift: Drift | null, stories: readonly Weighed[]): Trouble[] {
  if (holds.length === 0) return [];
  const told = [sameEverywhere(belief, holds), holeIn(belief, holds), arrowsAgainst(belief, holds)];
  const named: Trouble[] = told.filter((trouble) => trouble !== null && trouble.bayesFactor >= (isHopeless(trouble) ? NAMED_EVERYWHERE : NAMED)) as Trouble[];
  named.push(...stories.filter(({ bayesFactor }) => bayesFactor >= NAMED_STORY).map((story) => otherStory(story, holds)));
  if (drift) named.push(focusMoved(drift, false));
  const most = Math.max(...named.map(({ bayesFactor }) => bayesFactor));
  return named.filter(({ bayesFactor }) => bayesFactor >= most / EXPLAINED).toSorted((a, b) => b.bayesFactor - a.bayesFactor);
}

function otherStory({ story, bayesFactor }: Weighed, holds: readonly Hold[]): OtherStory {
  switch (story.is) {
    case 'misjudged': {
      const values = new Set(holds.slice(story.from, story.to + 1).map(({ value }) => value));
      return { trouble: 'verdicts misjudged', bayesFactor, values: [...values].toSorted((a, b) => a - b) };
    }
    case 'drifting':
      return { trouble: 'band drifts', bayesFactor, rate: story.rate };
    case 'play':
      return { trouble: 'play', bayesFactor, size: Math.abs(story.size) };
  }
}

export const focusMoved = (drift: Drift, seen: boolean): FocusMoved => ({ trouble: 'focus moved', ...drift, seen });

/** With these, more holds tell nothing more: the finish is offered, with that said. */
export const isHopeless = ({ trouble }: Trouble): boolean => trouble === 'flickers everywhere' || trouble === 'never lights' || trouble === 'lights everywhere';

/** With these, no band can be told. */
export const leavesNothing = ({ trouble }: Trouble): boolean => trouble === 'flickers everywhere' || trouble === 'never lights';

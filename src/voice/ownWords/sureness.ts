// How sure it is that a word was said and that it was this one: the odds that any of the words was said, and the odds that
// it was the nearest of them, each by a logistic rule over what comparing it told. In a room that rings every word is far,
// so the first alone took words for others; the second asks back where two are about as near.
import type { Likeness } from './likeness.ts';

type Weights = Readonly<Partial<Record<keyof Likeness, number>>>;

/** Fitted to four speakers' digits and eight synthetic voices, with rooms, echo, noise, talk and clicks. */
const SAID = { one: 0, uneven: 0, parts: { lead: -10 } satisfies Weights };
const THIS_ONE = { one: 0, parts: { lead: -10 } satisfies Weights };

/** Log odds; 0 is as likely as not. */
export function sureness(likeness: Likeness): number {
  const said = SAID.one + SAID.uneven * likeness.length ** 2 + weighed(SAID.parts, likeness);
  const thisOne = THIS_ONE.one + weighed(THIS_ONE.parts, likeness);
  return bothOf(said, thisOne);
}

const weighed = (weights: Weights, likeness: Likeness): number =>
  Object.entries(weights).reduce((sum, [part, weight]) => sum + weight * likeness[part as keyof Likeness], 0);

/** Log odds that two things are true of which each has its own, the second where the first is. */
function bothOf(first: number, second: number): number {
  const [a, b] = [Math.exp(-first), Math.exp(-second)];
  return -Math.log(a + b + a * b);
}

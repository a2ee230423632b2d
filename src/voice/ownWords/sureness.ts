// How sure it is that a word was said and that it was this one: the odds that any of the words was said, and the odds that
// it was the nearest of them, each by a logistic rule over what comparing it told. In a room that rings every word is far,
// so the first alone took words for others; the second asks back where two are about as near.
import type { Likeness } from './likeness.ts';

/**
 * Fitted to the digits of four speakers and of four synthetic voices, with rooms, echo, noise, talk and the sounds of a
 * camera, and checked on two of the speakers with weights fitted to the other two: docs/decisions/taught-words.md.
 */
const SAID = {
  one: 0.15,
  uneven: -8.49,
  parts: { lead: 24.15, ahead: -29.2, apart: -9.19, closest: -7.15, length: 5.78, warped: -8.2, closestLead: -7.86, worstLead: -1.9 },
};
const THIS_ONE = { one: 0.21, parts: { lead: -9.75, closestLead: -10.76, worstLead: -6.36, ahead: -1.05 } };

/**
 * What carries sound for less than half as long as the word would in this noise is a part of another, however near. Measured: of
 * words taken and right fewer than one in a hundred, of those taken and wrong one in five.
 */
const PART = -0.75;
const NEVER = -20;

/** Log odds; 0 is as likely as not. As sure as the less sure of the two. */
export function sureness(likeness: Likeness): number {
  if (likeness.carrying < PART) return NEVER;
  const said = SAID.one + SAID.uneven * likeness.length ** 2 + weighed(SAID.parts, likeness);
  return Math.min(said, THIS_ONE.one + weighed(THIS_ONE.parts, likeness));
}

const weighed = (weights: Partial<Record<keyof Likeness, number>>, likeness: Likeness): number =>
  Object.entries(weights).reduce((sum, [part, weight]) => sum + weight * likeness[part as keyof Likeness], 0);

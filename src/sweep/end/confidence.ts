// How sure the sweep is of a value: the belief that the true centre lies within one step of it. This is the number
// the person is shown, so the bench holds it against what simulated observers really get.
import { chanceThat, type Belief } from '../belief/belief.ts';
import type { Steps } from '../../units.ts';

/** P(|centre - value| <= one step). */
export function withinOneStep(belief: Belief, value: Steps): number {
  const { centre, scale } = belief.model;
  return chanceThat(belief, (h) => Math.abs(centre[h]! - value) <= scale.step);
}

/** The value of the scale with the most belief within one step of it; of equals, the one nearer zero. */
export function surestValue(belief: Belief): { value: Steps; within: number } {
  const { model, posterior } = belief;
  const { scale, centre, values } = model;
  const sums = new Float64Array(values.length);
  posterior.which.forEach((hypothesis, k) => {
    const at = (centre[hypothesis]! - scale.min) / scale.step;
    const from = Math.max(0, Math.ceil(at - 1));
    const to = Math.min(values.length - 1, Math.floor(at + 1));
    for (let index = from; index <= to; index++) sums[index]! += posterior.mass[k]!;
  });
  let best = 0;
  values.forEach((value, index) => {
    const better = sums[index]! - sums[best]!;
    if (better > 1e-12 || (better > -1e-12 && Math.abs(value) < Math.abs(values[best]!))) best = index;
  });
  return { value: values[best]!, within: sums[best]! };
}

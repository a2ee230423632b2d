// Two series of one lens: A at critical focus, B with the focus set a little aside. Turning the focus moves the centre and
// leaves the shape (width, softness, grades, sense of the arrows), so the joint posterior factorises:
//   p(centre A, centre B, shape | A, B) ∝ p(A | centre A, shape) p(B | centre B, shape) p(centre A) p(centre B) p(shape)
// Series B opens with p(centre B) p(shape | A), and after it p(centre A, shape | A, B) = p(centre A | shape, A) p(shape | A, B).
// The plain product of Bayes' rule; no other source. The centre of A has a flat prior within the reach: pairs that end
// up here are not drawn from the bell of those that stay on the scale, and the bell would pull them back to it.
import { beliefFrom, modelOf, weigh, type Belief } from '../belief/belief.ts';
import type { BandModel } from '../belief/bandModel.ts';
import { plainBell, shapeWeights } from '../belief/prior.ts';
import type { Plan } from '../plan.ts';
import { read } from '../verdict.ts';
import type { Transfer } from '../widthTransfer.ts';

export interface TransferPlan extends Plan {
  readonly transfer: Transfer;
}

export const isTransfer = (plan: Plan): plan is TransferPlan => plan.transfer !== undefined;

/** How far past both limits an edge of A may lie, as a share of the half-range. */
const FAR = 1;

/** The focus is turned by eye, maybe the wrong way: B's centre may lie anywhere, sooner inside; so many times the usual spread. */
const ANYWHERE = 2;

const known = new WeakMap<Transfer, Belief>();

/** What series A says by itself, on bands that reach far past the limits; worked out once. */
export function firstBelief({ scale, arrows, lapse, memory, transfer }: TransferPlan): Belief {
  const before = known.get(transfer);
  if (before) return before;
  const model = modelOf(scale, arrows !== 'absent', lapse, FAR);
  const flat = beliefFrom(model, shapeWeights(model, memory));
  const belief = transfer.holds.reduce((now, { value, verdict }) => weigh(now, value, read(verdict, arrows)).belief, flat);
  known.set(transfer, belief);
  return belief;
}

/** What is believed before the first hold of B: the shapes that A left, with their centre wherever the focus was turned to. */
export function asideOpening(plan: TransferPlan): Belief {
  const model = modelOf(plan.scale, plan.arrows !== 'absent', plan.lapse);
  const chances = shapeChances(firstBelief(plan));
  const centres = model.centre.map(plainBell(plan.scale, ANYWHERE));
  const room = summedByShape(model, (h) => centres[h]!);
  return beliefFrom(model, Float64Array.from(centres, (near, h) => (near * (chances[model.shape[h]!] ?? 0)) / room[model.shape[h]!]!));
}

/** The centre of A and the shape after both series; `aside` is the belief after B. */
export function carriedBelief(plan: TransferPlan, aside: Belief): Belief {
  const first = firstBelief(plan);
  const before = shapeChances(first);
  const after = shapeChances(aside);
  const weights = new Float64Array(first.model.hypotheses);
  first.posterior.which.forEach((h, k) => {
    const shape = first.model.shape[h]!;
    weights[h] = (first.posterior.mass[k]! / before[shape]!) * (after[shape] ?? 0);
  });
  return beliefFrom(first.model, weights);
}

/** P(shape), by its number. */
function shapeChances({ model, posterior }: Belief): Float64Array {
  const mass = new Float64Array(model.hypotheses);
  posterior.which.forEach((h, k) => (mass[h] = posterior.mass[k]!));
  return summedByShape(model, (h) => mass[h]!);
}

function summedByShape({ shape }: BandModel, of: (hypothesis: number) => number): Float64Array {
  const sums = new Float64Array(shape.reduce((most, one) => Math.max(most, one), 0) + 1);
  shape.forEach((one, h) => (sums[one] = sums[one]! + of(h)));
  return sums;
}

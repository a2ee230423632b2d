// Two series of one lens: A at critical focus, B with the focus set a little aside. Turning the focus moves the centre and
// leaves the shape (width, softness, grades, sense of the arrows), so the joint posterior factorises:
//   p(centre A, centre B, shape | A, B) ∝ p(A | centre A, shape) p(B | centre B, shape) p(centre A) p(centre B) p(shape)
// Series B opens with p(centre B) p(shape | A), and after it p(centre A, shape | A, B) = p(centre A | shape, A) p(shape | A, B).
// The plain product of Bayes' rule; no other source. The centre of A has a flat prior within the reach: pairs that end
// up here are not drawn from the bell of those that stay on the scale, and the bell would pull them back to it.
import { beliefFrom, modelOf, modest, weigh, type Belief } from '../belief/belief.ts';
import { weightsOf, type Bond } from '../belief/lights.ts';
import { lampShares, plainBell, widthWeights } from '../belief/prior.ts';
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

/** A sweep may be planned anew: what is known holds for the bands, the arrows and the memory that it was worked out on. */
const known = new WeakMap<Transfer, Pick<Plan, 'arrows' | 'memory'> & { readonly belief: Belief }>();

/** What series A says by itself, on bands that reach far past the limits; worked out once. */
export function firstBelief({ scale, arrows, lapse, memory, transfer }: TransferPlan): Belief {
  const model = modelOf(scale, arrows !== 'absent', lapse, FAR);
  const before = known.get(transfer);
  if (before?.belief.model === model && before.arrows === arrows && before.memory === memory) return before.belief;
  const flat = beliefFrom(model, widthWeights(model, memory), lampShares(model, memory));
  const belief = transfer.holds.reduce((now, { value, verdict }) => weigh(now, value, read(verdict, arrows)).belief, flat);
  known.set(transfer, { belief, arrows, memory });
  return belief;
}

/** What is believed before the first hold of B: the shapes that A left, with their centre wherever the focus was turned to. */
export function asideOpening(plan: TransferPlan): Belief {
  const model = modelOf(plan.scale, plan.arrows !== 'absent', plan.lapse);
  const shapes = shapesOf(firstBelief(plan));
  const centres = model.centre.map(plainBell(plan.scale, ANYWHERE));
  const room = new Float64Array(model.width.reduce((most, one) => Math.max(most, one), 0) + 1);
  model.width.forEach((width, h) => (room[width]! += centres[h]!));
  const chances = new Map([...shapes].map(([width, kinds]) => [width, kinds.reduce((sum, one) => sum + one, 0)]));
  const weights = Float64Array.from(centres, (near, h) => (near * (chances.get(model.width[h]!) ?? 0)) / room[model.width[h]!]!);
  const bond = new Map([...shapes].map(([width, kinds]) => [width, kinds.map((one) => one / (chances.get(width) ?? 1))]));
  return beliefFrom(model, weights, model.lampShares, bond);
}

/**
 * The centre of A and the shape after both series; `aside` is the belief after B. `stated`: as the belief is stated, with no
 * light likelier beforehand than another.
 */
export function carriedBelief(plan: TransferPlan, aside: Belief, stated = false): Belief {
  const first = firstBelief(plan);
  const { which, mass, ...lights } = stated ? modest(first).posterior : first.posterior;
  const before = shapesOf(first);
  const after = shapesOf(aside);
  const ratios = new Map([...after].map(([width, kinds]) => [width, kinds.map((one, at) => (one > 0 ? one / (before.get(width)?.[at] ?? 1) : 0))]));
  const told = weightsOf(first.model, { which, ...lights }, ratios);
  const weights = new Float64Array(first.model.hypotheses);
  which.forEach((h, k) => (weights[h] = mass[k]! * told[k]!));
  return beliefFrom(first.model, weights);
}

/** P(shape): for each width in grid points, of every pair of kinds. */
function shapesOf({ model, posterior, bond }: Belief): Bond {
  const { edgeKinds, lampKinds } = model;
  const whole = weightsOf(model, posterior, bond);
  const shapes = new Map<number, Float64Array>();
  posterior.which.forEach((h, k) => {
    const width = model.width[h]!;
    const kinds = shapes.get(width) ?? new Float64Array(edgeKinds * lampKinds);
    shapes.set(width, kinds);
    const tied = bond?.get(width);
    const share = posterior.mass[k]! / whole[k]!;
    for (let e = 0; e < edgeKinds; e++) {
      const edge = share * posterior.edges[k * edgeKinds + e]!;
      for (let l = 0; l < lampKinds; l++) {
        const at = e * lampKinds + l;
        kinds[at]! += edge * posterior.lamp[k * lampKinds + l]! * (tied ? tied[at]! : 1);
      }
    }
  });
  return shapes;
}

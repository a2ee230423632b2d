// The joint posterior of two series is held against one worked out by brute force over both centres and the shared shape.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { weigh, type Belief } from '../../../src/sweep/belief/belief.ts';
import type { BandModel, Lights } from '../../../src/sweep/belief/bandModel.ts';
import { outcomesOf } from '../../../src/sweep/belief/observation.ts';
import { asideOpening, carriedBelief, firstBelief, type TransferPlan } from '../../../src/sweep/transfer/joint.ts';
import { read, type Light, type Verdict } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';
import { opened } from '../staged.ts';

const lights: readonly Light[] = ['steady', 'late', 'flicker', 'dark', 'untold'];
const SCALE = { min: steps(-2), max: steps(2), step: 1 };
type Seen = { readonly value: number; readonly verdict: Verdict };

const seenOf = (most: number) =>
  fc.array(
    fc.record({
      value: fc.integer({ min: -2, max: 2 }),
      verdict: fc.record({ light: fc.constantFrom(...lights), arrows: fc.constantFrom('none', 'left', 'right', 'balanced') }),
    }),
    { minLength: 1, maxLength: most },
  );

function planWith(holds: readonly Seen[], arrows: 'absent' | 'right-is-up'): TransferPlan {
  const { plan } = opened({ scale: SCALE, arrows });
  const carried = holds.map(({ value, verdict }) => ({ value: steps(value), verdict }));
  return { ...plan, transfer: { of: 'sweep-0', side: 'high', visible: null, holds: carried } };
}

const weighed = (belief: Belief, holds: readonly Seen[], { arrows }: TransferPlan): Belief =>
  holds.reduce((now, { value, verdict }) => weigh(now, steps(value), read(verdict, arrows)).belief, belief);

const sum = (all: Iterable<number>): number => [...all].reduce((total, one) => total + one, 0);

/** P(shape): of every width with every pair of kinds, by brute force. */
function byShape({ model, posterior, bond }: Belief): Map<string, number> {
  const chances = new Map<string, number>();
  posterior.which.forEach((h, k) => {
    const width = model.width[h]!;
    const kinds = pairsOf(model).map(({ edge, lamp }) => {
      const tied = bond ? (bond.get(width)?.[edge * model.lampKinds + lamp] ?? 0) : 1;
      return { edge, lamp, weight: posterior.edges[k * model.edgeKinds + edge]! * posterior.lamp[k * model.lampKinds + lamp]! * tied };
    });
    const whole = sum(kinds.map(({ weight }) => weight));
    for (const { edge, lamp, weight } of kinds) {
      const shape = `${width} ${edge} ${lamp}`;
      chances.set(shape, (chances.get(shape) ?? 0) + (posterior.mass[k]! * weight) / whole);
    }
  });
  return chances;
}

const pairsOf = ({ edgeKinds, lampKinds }: BandModel) =>
  Array.from({ length: edgeKinds * lampKinds }, (_, at) => ({ edge: Math.floor(at / lampKinds), lamp: at % lampKinds }));

/** The chance that each kind of each band gives to some holds. */
function told({ model }: Belief, which: Int32Array, holds: readonly Seen[], { arrows }: TransferPlan): Lights {
  const lights = {
    which,
    edges: new Float64Array(which.length * model.edgeKinds).fill(1),
    lamp: new Float64Array(which.length * model.lampKinds).fill(1),
  };
  for (const { value, verdict } of holds) model.weigh(value - SCALE.min, outcomesOf(read(verdict, arrows), model.arrows), lights);
  return lights;
}

test('after both series the shape and the centre are those of the whole product, hypothesis by hypothesis', () => {
  fc.assert(
    fc.property(seenOf(6), seenOf(6), fc.constantFrom('absent' as const, 'right-is-up' as const), (first, second, arrows) => {
      const plan = planWith(first, arrows);
      const a = firstBelief(plan);
      const b = asideOpening(plan);
      const after = weighed(b, second, plan);
      const joint = carriedBelief(plan, after);
      // Brute force: every pair of hypotheses of one shape, p(A's) times p(B's centre | shape) times what B showed.
      const widths = new Map<number, number>();
      b.posterior.which.forEach((h, k) => widths.set(b.model.width[h]!, (widths.get(b.model.width[h]!) ?? 0) + b.posterior.mass[k]!));
      const shown = told(b, b.posterior.which, second, plan);
      const { edgeKinds, lampKinds } = b.model;
      const chanceOfB = new Map<string, number>();
      b.posterior.which.forEach((h, k) => {
        const width = b.model.width[h]!;
        const centre = b.posterior.mass[k]! / (widths.get(width) ?? 1);
        for (const { edge, lamp } of pairsOf(b.model)) {
          const shape = `${width} ${edge} ${lamp}`;
          const chance = centre * shown.edges[k * edgeKinds + edge]! * shown.lamp[k * lampKinds + lamp]!;
          chanceOfB.set(shape, (chanceOfB.get(shape) ?? 0) + chance);
        }
      });
      const product = new Map<number, number>();
      a.posterior.which.forEach((h, k) => {
        const weights = pairsOf(a.model).map(
          ({ edge, lamp }) =>
            a.posterior.edges[k * edgeKinds + edge]! * a.posterior.lamp[k * lampKinds + lamp]! * (chanceOfB.get(`${a.model.width[h]!} ${edge} ${lamp}`) ?? 0),
        );
        product.set(h, a.posterior.mass[k]! * sum(weights));
      });
      const whole = sum(product.values());
      expect(sum(joint.posterior.mass)).toBeCloseTo(1, 9);
      // Bands too unlikely to keep are dropped on the way.
      const off = [...joint.posterior.which].map((h, k) => Math.abs((joint.posterior.mass[k] ?? 0) - (product.get(h) ?? 0) / whole));
      expect(Math.max(...off)).toBeLessThan(1e-5);
    }),
    { numRuns: 8 },
  );
}, 60_000);

test('before its first hold the second series believes of the shape what the first one left, and adds nothing to the centre', () => {
  fc.assert(
    fc.property(seenOf(8), fc.constantFrom('absent' as const, 'right-is-up' as const), (holds, arrows) => {
      const plan = planWith(holds, arrows);
      const first = firstBelief(plan);
      const aside = asideOpening(plan);
      const within = [...byShape(aside)];
      const known = byShape(first);
      const share = sum(within.map(([shape]) => known.get(shape) ?? 0));
      expect(Math.max(...within.map(([shape, chance]) => Math.abs(chance - (known.get(shape) ?? 0) / share)))).toBeLessThan(1e-9);
      const joint = carriedBelief(plan, aside);
      expect(sum(joint.posterior.mass)).toBeCloseTo(1, 9);
      expect(joint.posterior.mass.every(Number.isFinite)).toBe(true);
    }),
    { numRuns: 30 },
  );
}, 60_000);

test('what the first series says is of the scale and the arrows that the sweep is planned on now', () => {
  const holds: Seen[] = [{ value: 1, verdict: { light: 'flicker', arrows: 'left' } }];
  const plan = planWith(holds, 'right-is-up');
  firstBelief(plan);
  const wider = { ...plan, scale: { ...SCALE, min: steps(-3), max: steps(3) } };
  const turned = { ...plan, arrows: 'right-is-down' } as const;
  for (const now of [wider, turned]) expect(firstBelief(now)).toEqual(firstBelief({ ...now, transfer: { ...now.transfer } }));
});

// The joint posterior of two series is held against one worked out by brute force over both centres and the shared shape.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { weigh, type Belief } from '../../../src/sweep/belief/belief.ts';
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

function byShape({ model, posterior }: Belief): Map<number, number> {
  const chances = new Map<number, number>();
  posterior.which.forEach((h, k) => {
    const shape = model.shape[h] ?? -1;
    chances.set(shape, (chances.get(shape) ?? 0) + (posterior.mass[k] ?? 0));
  });
  return chances;
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
      const shapes = byShape(a);
      const chanceOfB = new Map<number, number>();
      b.posterior.which.forEach((h, k) => {
        const likelihood = second.reduce((product, one) => product * chanceOf(b, h, one, plan), 1);
        const shape = b.model.shape[h] ?? -1;
        chanceOfB.set(shape, (chanceOfB.get(shape) ?? 0) + ((b.posterior.mass[k] ?? 0) / (shapes.get(shape) ?? 1)) * likelihood);
      });
      const product = a.posterior.which.map(Number).reduce((all, h, k) => {
        all.set(h, (a.posterior.mass[k] ?? 0) * (chanceOfB.get(a.model.shape[h] ?? -1) ?? 0));
        return all;
      }, new Map<number, number>());
      const whole = sum(product.values());
      expect(sum(joint.posterior.mass)).toBeCloseTo(1, 9);
      // Bands too unlikely to keep are dropped on the way.
      const off = [...joint.posterior.which].map((h, k) => Math.abs((joint.posterior.mass[k] ?? 0) - (product.get(h) ?? 0) / whole));
      expect(Math.max(...off)).toBeLessThan(1e-5);
    }),
    { numRuns: 15 },
  );
});

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
    { numRuns: 60 },
  );
});

function chanceOf({ model }: Belief, hypothesis: number, { value, verdict }: Seen, { arrows }: TransferPlan): number {
  const alone: Belief = { model, opening: ONE(hypothesis), posterior: ONE(hypothesis) };
  return weigh(alone, steps(value), read(verdict, arrows)).predictive;
}

const ONE = (hypothesis: number) => ({ which: Int32Array.of(hypothesis), mass: Float64Array.of(1) });

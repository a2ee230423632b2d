// The simulated bodies and lenses of the bench. Every method of a run meets the same ones, hold for hold as far as it
// asks the same values. Invented, except where a line says otherwise.
import type { PracticeCamera } from '../../../src/practice/camera.ts';
import { normal, seededRandom, type Random } from '../../../src/practice/random.ts';
import type { ArrowDisplay } from '../../../src/sweep/verdict.ts';

export interface ObserverFamily {
  readonly name: string;
  /** Draws one camera; `arrows` is what a body of this family would show if it had arrows. */
  readonly draw: (random: Random) => Omit<PracticeCamera, 'arrows'>;
  readonly arrows: Exclude<ArrowDisplay, 'absent'>;
  /** Only a body with arrows tells this family from an ordinary one. */
  readonly arrowsOnly?: true;
}

const LIMIT = 20;

/** Centres normal (0, 6), half-widths log-normal (4, 0.5), two lapses in a hundred. */
export const ordinary = (softness: number): ObserverFamily => ({
  name: `softness ${softness}`,
  arrows: 'right-is-up',
  draw: (random) => {
    const centre = normal(random, 0, 6);
    const halfWidth = Math.exp(normal(random, Math.log(4), 0.5));
    return { low: centre - halfWidth, high: centre + halfWidth, ...light(random, softness, softness, 0.02) };
  },
});

const withHalfWidth = (name: string, from: number, to: number): ObserverFamily => ({
  name,
  arrows: 'right-is-up',
  draw: (random) => {
    const centre = normal(random, 0, 6);
    const halfWidth = from + (to - from) * random();
    return { low: centre - halfWidth, high: centre + halfWidth, ...light(random, 0.5, 0.5, 0.02) };
  },
});

/** A band cut by one limit: one edge past it, the other at least three steps inside. */
const pastTheLimit: ObserverFamily = {
  name: 'past the limit',
  arrows: 'right-is-up',
  draw: (random) => {
    const side = random() < 0.5 ? 1 : -1;
    const halfWidth = 3 + 5 * random();
    const hidden = LIMIT + 1 + random() * (2 * halfWidth - 5);
    const edges = [side * hidden, side * (hidden - 2 * halfWidth)];
    return { low: Math.min(...edges), high: Math.max(...edges), ...light(random, 0.5, 0.5, 0.02) };
  },
};

/** A pair that its body's scale hardly reaches: centre 15 to 24, half-width 3 to 8. */
export function offTheScale(random: Random): { low: number; high: number } {
  const centre = 15 + 9 * random();
  const halfWidth = 3 + 5 * random();
  return { low: centre - halfWidth, high: centre + halfWidth };
}

const fromOrdinary = (name: string, change: Partial<ObserverFamily>, softLow = 0.5, softHigh = 0.5, lapses = 0.02): ObserverFamily => ({
  ...ordinary(0.5),
  name,
  draw: (random) => ({ ...ordinary(0.5).draw(random), ...light(random, softLow, softHigh, lapses) }),
  ...change,
});

/** Lenses and people that are not as the belief expects. */
export const awkward: readonly ObserverFamily[] = [
  withHalfWidth('slow lenses', 8, 15),
  withHalfWidth('narrow bands', 1, 2),
  pastTheLimit,
  fromOrdinary('5 % lapses', {}, 0.5, 0.5, 0.05),
  fromOrdinary('unequal softness', {}, 0.3, 1),
  fromOrdinary('reversed arrows', { arrows: 'right-is-down', arrowsOnly: true }),
];

export function light(random: Random, softLow: number, softHigh: number, lapses: number) {
  return {
    softLow,
    softHigh,
    lapses,
    lateUpTo: Math.max(0.3, normal(random, 1, 0.3)),
    darkFrom: 3 * (10 / 3) ** random(),
  };
}

/** The camera of one run, and the chance that its light follows: the same for every method. */
export function observer(family: ObserverFamily, run: number, arrows: boolean): { camera: PracticeCamera; random: Random } {
  const camera = family.draw(seededRandom(2 * run + 1));
  return { camera: { ...camera, arrows: arrows ? family.arrows : 'absent' }, random: seededRandom(2 * run + 2) };
}

// How far something long is, as one share that only grows, through stages that each count for themselves. What is over within a
// few frames is not told: a bar that flashes by tells nobody anything.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { HowFar } from '../../stepwise.ts';

export interface Stages {
  /** From 0 to 1; null while nothing long goes on. */
  readonly share: ReadonlySignal<number | null>;
  /** What one stage tells, which takes the whole from this share to that. */
  stage(from: number, to: number): (far: HowFar) => void;
  over(): void;
}

/** Items from which on it is told. */
const MANY = 1000;

export function createStages(): Stages {
  const share = signal<number | null>(null);
  return {
    share,
    stage:
      (from, to) =>
      ({ done, of }) => {
        if (of >= MANY) share.value = Math.max(share.peek() ?? 0, from + ((to - from) * done) / of);
      },
    over() {
      share.value = null;
    },
  };
}

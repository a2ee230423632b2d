// The methods without a belief: the walk as it is taught and done on paper, and plain bisection (common practice, no
// source). When the first value fails, arrows tell the way where the body has them; otherwise five steps up and five down
// show on which side the light is better.
import { halfPress, type PracticeCamera } from '../../../src/practice/camera.ts';
import type { Random } from '../../../src/practice/random.ts';
import type { Light, Verdict } from '../../../src/sweep/verdict.ts';
import { Stopwatch, type SweepResult } from './result.ts';

const LIMIT = 20;
const STRIDE = 4;
const TO_EACH_SIDE = 5;
const WORSE: Record<Light, number> = { steady: 0, late: 1, flicker: 2, untold: 2, dark: 3 };

/** From 0 outward, one value at a time, until the light fails on both sides; a value is in when it holds `times` times. */
export function taughtWalk(camera: PracticeCamera, random: Random, times: number): SweepResult {
  const sweep = new HandSweep(camera, random, times);
  const first = sweep.towardsTheBand(1);
  if (first === null) return sweep.nothing();
  return sweep.found(sweep.walk(first, -1), sweep.walk(first, 1));
}

/** Strides to the first value that holds, then halves the gap on each side. */
export function plainBisection(camera: PracticeCamera, random: Random): SweepResult {
  const sweep = new HandSweep(camera, random, 1);
  const first = sweep.towardsTheBand(STRIDE);
  if (first === null) return sweep.nothing();
  return sweep.found(sweep.halve(first, -1), sweep.halve(first, 1));
}

class HandSweep {
  readonly #camera: PracticeCamera;
  readonly #random: Random;
  readonly #times: number;
  readonly #watch = new Stopwatch();
  /** What was found at each value: a value once judged is not held again. */
  readonly #judged = new Map<number, boolean>();
  #last: Verdict = { light: 'dark', arrows: 'none' };

  constructor(camera: PracticeCamera, random: Random, times: number) {
    this.#camera = camera;
    this.#random = random;
    this.#times = times;
  }

  holds(value: number): boolean {
    const known = this.#judged.get(value);
    if (known !== undefined) return known;
    let steady = true;
    for (let time = 0; time < this.#times && steady; time++) {
      const verdict = halfPress(this.#camera, value, this.#random);
      this.#watch.count(value, verdict);
      steady = verdict.light === 'steady';
      this.#last = verdict;
    }
    this.#judged.set(value, steady);
    return steady;
  }

  /** A value that holds, coming from 0 in strides; the other way, then in shorter strides, where none was met. */
  towardsTheBand(stride: number): number | null {
    if (this.holds(0)) return 0;
    const way = this.#wayToGo();
    const met = [...this.#judged].find(([, held]) => held);
    if (met) return met[0];
    for (let gap = stride; gap >= 1; gap = Math.floor(gap / 2)) {
      for (const direction of [way, -way]) {
        for (let value = direction * gap; Math.abs(value) <= LIMIT; value += direction * gap) {
          if (this.holds(value)) return value;
        }
      }
    }
    return null;
  }

  #wayToGo(): number {
    const { arrows } = this.#last;
    if (arrows === 'left' || arrows === 'right') return (arrows === 'right') === (this.#camera.arrows === 'right-is-up') ? 1 : -1;
    if (this.holds(TO_EACH_SIDE)) return 1;
    const above = WORSE[this.#last.light];
    if (this.holds(-TO_EACH_SIDE)) return -1;
    return above <= WORSE[this.#last.light] ? 1 : -1;
  }

  walk(from: number, direction: 1 | -1): number {
    let last = from;
    while (Math.abs(last + direction) <= LIMIT && this.holds(last + direction)) last += direction;
    return last;
  }

  halve(from: number, direction: 1 | -1): number {
    const outs = [...this.#judged].filter(([value, held]) => !held && (value - from) * direction > 0).map(([value]) => value);
    let last = from;
    let out = outs.length > 0 ? outs.reduce((a, b) => (Math.abs(a - from) < Math.abs(b - from) ? a : b)) : direction * (LIMIT + 1);
    while (Math.abs(out - last) > 1) {
      const middle = Math.round((last + out) / 2);
      if (this.holds(middle)) last = middle;
      else out = middle;
    }
    return last;
  }

  found(low: number, high: number): SweepResult {
    const centre = (low + high) / 2;
    return { ...this.#cost(), centre, chosen: Math.trunc(centre), stated: 1, ended: 'band' };
  }

  nothing(): SweepResult {
    return { ...this.#cost(), centre: 0, chosen: 0, stated: 0, ended: 'nothing' };
  }

  get #centre(): number {
    return (this.#camera.low + this.#camera.high) / 2;
  }

  #cost() {
    return { holds: this.#watch.holds, seconds: this.#watch.seconds, truth: this.#centre };
  }
}

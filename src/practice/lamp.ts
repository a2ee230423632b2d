// What a person sees of one half-press on the practice camera: when the focus light goes on and off during the hold
// time, and which arrows show meanwhile. It plays a verdict; judging it is left to the person.
// Behaviour from common practice, no source; no gap or delay is too short to be seen.
import type { SweepState } from '../sweep/state.ts';
import type { Arrows, Light, Verdict } from '../sweep/verdict.ts';
import { seconds, type Seconds, type Steps } from '../units.ts';
import { halfPress } from './camera.ts';
import { cameraOf } from './cameras.ts';
import { oddPress } from './oddCamera.ts';
import { seededRandom, type Random } from './random.ts';

type ArrowsLit = 'none' | 'left' | 'right' | 'both';

/** From `at` seconds after the half-press the lamp looks like this, until the next entry. */
export interface LampMoment {
  readonly at: Seconds;
  readonly lit: boolean;
  readonly arrows: ArrowsLit;
}

/** The whole course of one hold; the first entry is at zero. */
export type LampCourse = readonly [LampMoment, ...LampMoment[]];

/** The lamp before and after a half-press. */
export const UNLIT: LampMoment = { at: seconds(0), lit: false, arrows: 'none' };

/** Shortest delay of a late light and shortest gap of a flickering one, in seconds. */
const SHORTEST_DELAY = 0.5;
const SHORTEST_GAP = 0.15;
const LONGEST_GAP = 0.45;
/** A flickering light goes out this many times at most. */
const MOST_GAPS = 3;

/** Plays a verdict over the hold time. */
export function courseOf(verdict: Verdict, holdTime: Seconds, random: Random): LampCourse {
  const on = (at: number): LampMoment => ({ at: seconds(at), lit: true, arrows: whileLit(verdict) });
  const off = (at: number): LampMoment => ({ at: seconds(at), lit: false, arrows: shown(verdict.arrows) });
  switch (verdict.light) {
    case 'steady':
      return [on(0)];
    case 'late':
      return [off(0), on(SHORTEST_DELAY + random() * 0.3 * holdTime)];
    case 'flicker':
      return [on(0), ...gapsOf(holdTime, random).flatMap(({ from, to }) => [off(from), on(to)])];
    case 'dark':
    case 'untold':
      return [off(0)];
  }
}

/** What shows at a time of the course. */
export function lampAt(course: LampCourse, elapsed: Seconds): LampMoment {
  return course.findLast(({ at }) => at <= elapsed) ?? course[0];
}

/** Seconds from a time of the course to its next change, or null when there is none. */
export function untilChange(course: LampCourse, elapsed: Seconds): Seconds | null {
  const next = course.find(({ at }) => at > elapsed);
  return next ? seconds(next.at - elapsed) : null;
}

/** What the half-press under way shows in a practice sweep, until it is judged; null on real kit and outside a hold. */
export function lampOf({ plan, phase, journal }: SweepState): LampCourse | null {
  if (plan.practice === null || (phase.name !== 'holding' && phase.name !== 'judging')) return null;
  const nth = journal.filter(({ did }) => did === 'began').length;
  const { verdict, random } = practiceHold(plan, phase.next.value, nth);
  return courseOf(verdict, plan.manner.holdTime, random);
}

/** What the `nth` half-press of a practice sweep shows at a value: the same seed always shows the same. */
export function practiceVerdict(plan: SweepState['plan'], value: Steps, nth: number): Verdict | null {
  return plan.practice === null ? null : practiceHold(plan, value, nth).verdict;
}

function practiceHold({ practice, scale, arrows }: SweepState['plan'], value: Steps, nth: number) {
  const { shift = 0, oddity, ...drawn } = practice ?? { seed: 0 };
  const random = seededRandom(drawn.seed * 1009 + nth);
  const camera = cameraOf(drawn, scale, arrows);
  const at = value - shift;
  const verdict = oddity ? oddPress(camera, oddity, at, nth, drawn.seed, random) : halfPress(camera, at, random);
  return { verdict, random };
}

/** Short gaps, one in each equal stretch of the hold, so that the light is seen to come back between them. */
function gapsOf(holdTime: Seconds, random: Random): { from: number; to: number }[] {
  const count = 1 + Math.floor(random() * MOST_GAPS);
  const stretch = holdTime / count;
  return Array.from({ length: count }, (_, index) => {
    const length = SHORTEST_GAP + random() * (Math.min(LONGEST_GAP, stretch / 3) - SHORTEST_GAP);
    const from = index * stretch + (0.2 + 0.6 * random()) * (stretch - length);
    return { from, to: from + length };
  });
}

/** Arrows as lamps. `lopsided` does not say which of the two was more often lit. */
function shown(arrows: Arrows): ArrowsLit {
  return arrows === 'balanced' || arrows === 'lopsided' ? 'both' : arrows;
}

/** With a failing light the arrows belong to the moments without it. */
function whileLit({ light, arrows }: { light: Light; arrows: Arrows }): ArrowsLit {
  return light === 'steady' ? shown(arrows) : 'none';
}

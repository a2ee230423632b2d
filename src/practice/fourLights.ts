// The four things a focus light can do in a hold, as courses of the practice lamp that always come out the same: to be shown
// to a person before they judge one.
import { courseOf, lampAt, type LampCourse } from './lamp.ts';
import type { Light } from '../sweep/verdict.ts';
import { seconds, type Seconds } from '../units.ts';

export type ShownLight = Exclude<Light, 'untold'>;

export const FOUR_LIGHTS: readonly ShownLight[] = ['steady', 'late', 'flicker', 'dark'];

/** One showing: as short as the shortest hold time there is, and then dark for a moment, so that its beginning is seen. */
const SHOWING = seconds(3);
const BETWEEN_SHOWINGS = seconds(0.8);

/** Chosen so that a late light keeps dark for a second, and a flickering one goes out twice. */
const WOBBLE = 0.5;

export const showingOf = (light: ShownLight): LampCourse => courseOf({ light, arrows: 'none' }, SHOWING, () => WOBBLE);

/** The stretches of a showing in which the light is on, as shares of it: to be drawn where nothing may move. */
export function litStretches(course: LampCourse): { readonly from: number; readonly to: number }[] {
  return course.flatMap(({ at, lit }, index) => {
    const to = course[index + 1]?.at ?? SHOWING;
    return lit ? [{ from: at / SHOWING, to: to / SHOWING }] : [];
  });
}

/** Is the light on, so many seconds after the first showing began? */
export function isLit(course: LampCourse, elapsed: Seconds): boolean {
  const into = elapsed % (SHOWING + BETWEEN_SHOWINGS);
  return into < SHOWING && lampAt(course, seconds(into)).lit;
}

/** Seconds until any light of these showings changes. */
export function untilNextChange(courses: readonly LampCourse[], elapsed: Seconds): Seconds {
  const whole = SHOWING + BETWEEN_SHOWINGS;
  const into = elapsed % whole;
  const changes = [...courses.flatMap((course) => course.map(({ at }) => at as number)), SHOWING, whole];
  return seconds(Math.min(...changes.filter((at) => at > into + 1e-6)) - into);
}

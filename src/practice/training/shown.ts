// What one training hold shows: drawn by itself, so that nothing can be guessed from the holds before it, and played at
// a level of the ladder. Never more than two flashes a hold, well under three a second (WCAG 2.2, 2.3.1).
import { seconds } from '../../units.ts';
import type { LampCourse, LampMoment } from '../lamp.ts';
import type { Random } from '../random.ts';
import { levelOf } from './ladder.ts';
import { PLAIN_LEVEL } from './levels.ts';
import type { TrainingLight } from './round.ts';

/** Shorter than a real hold, to see more lights in a sitting; long enough for every delay and gap of the ladder. */
export const TRAINING_HOLD = seconds(2);

/** One of the ordinary mixture: as many steady lights as a sweep shows, and a dark one now and then. */
const MIXTURE = [
  { light: 'steady', upTo: 0.4 },
  { light: 'late', upTo: 0.65 },
  { light: 'flicker', upTo: 0.9 },
] as const;
/** Share of late and flickering lights shown plainly however high the ladder stands: what is missed there is a lapse. */
const PLAINLY = 0.4;
/** A flickering light goes out once or twice, each time in its own half of the hold. */
const MOST_GAPS = 2;

export interface Shown {
  readonly light: TrainingLight;
  readonly level: number;
}

export function draw(level: number, random: Random): Shown {
  const lot = random();
  const light = MIXTURE.find(({ upTo }) => lot < upTo)?.light ?? 'dark';
  return { light, level: random() < PLAINLY ? Math.min(level, PLAIN_LEVEL) : level };
}

export function courseShown({ light, level }: Shown, random: Random): LampCourse {
  const { delay, gap } = levelOf(level);
  switch (light) {
    case 'steady':
      return [on(0)];
    case 'late':
      return [off(0), on(delay)];
    case 'flicker':
      return [on(0), ...gaps(gap, random).flatMap((from) => [off(from), on(from + gap)])];
    case 'dark':
      return [off(0)];
  }
}

function gaps(length: number, random: Random): number[] {
  const count = 1 + Math.floor(random() * MOST_GAPS);
  const stretch = TRAINING_HOLD / count;
  return Array.from({ length: count }, (_, index) => index * stretch + (0.3 + 0.5 * random()) * (stretch - length));
}

const on = (at: number): LampMoment => ({ at: seconds(at), lit: true, arrows: 'none' });
const off = (at: number): LampMoment => ({ at: seconds(at), lit: false, arrows: 'none' });

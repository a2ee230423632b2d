// Drawing practice cameras: lenses as they come (common practice, no source), one for every seed.
import type { Plan } from '../sweep/plan.ts';
import { halfRange, type Scale } from '../sweep/scale.ts';
import type { ArrowDisplay } from '../sweep/verdict.ts';
import type { PracticeCamera } from './camera.ts';
import { normal, seededRandom, type Random } from './random.ts';

type Drawn = Pick<NonNullable<Plan['practice']>, 'seed' | 'band'>;

/** The practice camera of a seed: the same seed always has the same band. */
export function cameraOf({ seed, band }: Drawn, scale: Scale, arrows: ArrowDisplay): PracticeCamera {
  const random = seededRandom(seed);
  const camera = drawCamera(random, scale, arrows);
  return band ? pastTheLimit(camera, scale, random) : camera;
}

/** How far to turn the ring of a practice camera so that its band lies inside the scale, not always in its middle. */
export function shiftInside(drawn: Drawn, scale: Scale, arrows: ArrowDisplay): number {
  const { low, high } = cameraOf(drawn, scale, arrows);
  const off = Math.round((seededRandom(drawn.seed + 1)() - 0.5) * 0.4 * halfRange(scale)) * scale.step;
  return Math.round((scale.min + scale.max - low - high) / 2) + off;
}

/** A body and lens whose band lies on the scale: centre within three fifths of it, half-width log-normal about a fifth. */
function drawCamera(random: Random, scale: Scale, arrows: ArrowDisplay): PracticeCamera {
  const half = halfRange(scale);
  const middle = (scale.min + scale.max) / 2;
  const centre = middle + Math.max(-0.6, Math.min(0.6, normal(random, 0, 0.3))) * half * scale.step;
  const reach = Math.min(0.35, Math.max(0.06, Math.exp(normal(random, Math.log(0.2), 0.5)))) * half * scale.step;
  return {
    low: centre - reach,
    high: centre + reach,
    softLow: 0.4,
    softHigh: 0.4,
    lateUpTo: 1,
    darkFrom: 3 + 5 * random(),
    lapses: 0.01,
    arrows,
  };
}

/** The same light with its band at a limit: one end past it, the other well inside, the centre on either side of it. */
function pastTheLimit(camera: PracticeCamera, scale: Scale, random: Random): PracticeCamera {
  const reach = Math.max((camera.high - camera.low) / 2, 0.2 * halfRange(scale) * scale.step);
  const outwards = (0.8 * random() - 0.4) * reach;
  const centre = random() < 0.5 ? scale.max + outwards : scale.min - outwards;
  return { ...camera, low: centre - reach, high: centre + reach };
}

// Drawing practice cameras: lenses as they come (common practice, no source), one for every seed.
import { halfRange, type Scale } from '../sweep/scale.ts';
import type { ArrowDisplay } from '../sweep/verdict.ts';
import type { PracticeCamera } from './camera.ts';
import { normal, seededRandom, type Random } from './random.ts';

/** The practice camera of a seed: the same seed always has the same band. */
export const cameraOf = (seed: number, scale: Scale, arrows: ArrowDisplay): PracticeCamera =>
  drawCamera(seededRandom(seed), scale, arrows);

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

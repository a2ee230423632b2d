// The practice camera as its pictures show it: where its band is centred, what one step moves focus by, and how well its autofocus
// repeats. One for every seed; how bodies differ in it: common practice, no source.
import { confusion } from '../../optics/sensor.ts';
import { stepAtTarget, USUAL_STEP_WORTH } from '../../optics/stepWorth.ts';
import { nearestOn, type Scale } from '../../sweep/scale.ts';
import type { Millimetres, Steps } from '../../units.ts';
import { cameraOf } from '../cameras.ts';
import { normal, seededRandom, type Random } from '../random.ts';
import { PRACTICE_FACTS, PRACTICE_MAGNIFICATION } from './practiceFacts.ts';

export interface PicturedCamera {
  /** In corrections; it need not be whole. */
  readonly centre: number;
  /** Millimetres at the target that focus moves by from one correction to the next. */
  readonly step: number;
  /** The correction that its body is set to to begin with, as a sweep may have left it: near the centre, seldom on it. */
  readonly set: Steps;
  /** Standard deviation of where autofocus stops, in corrections. */
  readonly scatter: number;
  /** How much farther away it stops after focus was thrown off to near than to far, in corrections. */
  readonly nearLessFar: number;
}

/** How one picture was focused: by eye on the target itself, or by autofocus at a correction, focus thrown off before. */
export type PracticeTurn = { readonly by: 'live view' } | { readonly by: 'autofocus'; readonly at: number; readonly thrown: 'near' | 'far' };

/** Keeps these draws apart from those of the band. */
const PICTURES_DRAW = 31_013;
/** A person who focuses at full magnification misses by this, in corrections, as a standard deviation. */
const BY_EYE = 0.15;

export function picturedCamera(seed: number, scale: Scale): PicturedCamera {
  const { low, high } = cameraOf({ seed }, scale, 'absent');
  const centre = (low + high) / 2;
  const random = seededRandom(seed + PICTURES_DRAW);
  const blur = { aperture: PRACTICE_FACTS.aperture, confusion: confusion(PRACTICE_FACTS.sensor, { by: 'diagonal' }) };
  const usual: Millimetres = stepAtTarget(blur, USUAL_STEP_WORTH, PRACTICE_MAGNIFICATION);
  return {
    centre,
    step: (usual * Math.exp(normal(random, 0, 0.15))) / scale.step,
    set: nearestOn(scale, normal(random, centre, 2 * scale.step)),
    scatter: 0.25 * scale.step,
    nearLessFar: normal(random, 0, 0.2) * scale.step,
  };
}

/** Millimetres behind the target that focus falls in one picture. A positive correction moves focus away from the camera. */
export function focusErrorIn({ centre, step, scatter, nearLessFar }: PicturedCamera, turn: PracticeTurn, random: Random): number {
  if (turn.by === 'live view') return step * normal(random, 0, BY_EYE);
  return step * (normal(random, turn.at - centre, scatter) + (turn.thrown === 'near' ? nearLessFar : -nearLessFar) / 2);
}

// For those who place the depth of field on purpose: with focus on the subject about half of it lies in front.
// Another share is had by moving the focus, and so by shifting the chosen value; what is said always tells that it
// was shifted.
import * as v from 'valibot';
import { steps, type Millimetres, type Steps } from '../units.ts';
import { nearestOn, writeSteps, type Scale } from '../sweep/scale.ts';
import { failed, got, type Result } from '../result.ts';
import type { DepthOfField } from './depthOfField.ts';
import { writeNumber } from './quantity.ts';

export const SHARE = 'Enter the share of the depth of field in front of the subject, from 0 to 100 %.';
/** Share of the whole depth that lies in front of the subject, 0 to 1. */
export const FrontShare = v.pipe(v.number(SHARE), v.minValue(0, SHARE), v.maxValue(1, SHARE), v.brand('FrontShare'));
export type FrontShare = v.InferOutput<typeof FrontShare>;

export interface Placement {
  /** How far the focus moves at the target: positive is away from the camera. */
  readonly shift: number;
  /** The correction to enter, and how many steps of it are the shift. */
  readonly chosen: Steps;
  readonly moved: Steps;
  readonly say: string;
}

/** The value for this share, from the value that puts focus on the subject. `step` is one step at the target. */
export function placeDepth(
  onSubject: Steps,
  share: FrontShare,
  depth: DepthOfField,
  step: Millimetres,
  scale: Scale,
): Result<Placement> {
  if (depth.total === 'infinite') {
    return failed(
      'The depth of field has no far end here, so it has no share in front: open the aperture or move nearer.',
    );
  }
  // Moving the focus by this much lengthens the front by as much, to first order.
  const shift = share * depth.total - depth.front;
  const chosen = nearestOn(scale, onSubject + shift / step);
  const moved = steps(chosen - onSubject);
  if (Math.abs(onSubject + shift / step - chosen) > scale.step) {
    return failed('The scale of this body ends before that share is reached: choose a share nearer to the middle.');
  }
  const front = `${writeNumber(share * 100, 0)} % of the depth of field in front of the subject`;
  const say =
    moved === 0
      ? `${writeSteps(chosen)} already puts about ${front}.`
      : `${writeSteps(chosen)} instead of ${writeSteps(onSubject)}, shifted on purpose to put ${front}: an estimate.`;
  return got({ shift, chosen, moved, say });
}

// For those who place the depth of field on purpose: with focus on the subject about half of it lies in front.
// Another share is had by moving the focus, and so by shifting the chosen value; what is said always tells
// that it was shifted.
import * as v from 'valibot';
import { steps, type Millimetres, type Steps } from '../units.ts';
import { nearestOn, type Scale } from '../sweep/scale.ts';
import { failed, got, type Result } from '../result.ts';
import { plain, type BenchFault } from './fault.ts';
import type { DepthOfField } from './depthOfField.ts';

const OTHERWISE = plain('no share');
/** Share of the whole depth that lies in front of the subject, 0 to 1. */
export const FrontShare = v.pipe(v.number(OTHERWISE), v.minValue(0, OTHERWISE), v.maxValue(1, OTHERWISE), v.brand('FrontShare'));
export type FrontShare = v.InferOutput<typeof FrontShare>;

export interface Placement {
  /** How far the focus moves at the target: positive is away from the camera. */
  readonly shift: number;
  /** The correction to enter, the one that puts focus on the subject, and the steps between them. */
  readonly chosen: Steps;
  readonly onSubject: Steps;
  readonly moved: Steps;
  readonly share: FrontShare;
}

/** The value for this share, from the value that puts focus on the subject. `step` is one step at the target. */
export function placeDepth(onSubject: Steps, share: FrontShare, depth: DepthOfField, step: Millimetres, scale: Scale): Result<Placement, BenchFault> {
  if (depth.total === 'infinite') return failed({ is: 'depth without end' });
  // Moving the focus by this much lengthens the front by as much, to first order.
  const shift = share * depth.total - depth.front;
  const chosen = nearestOn(scale, onSubject + shift / step);
  const moved = steps(chosen - onSubject);
  if (Math.abs(onSubject + shift / step - chosen) > scale.step) return failed({ is: 'share beyond the range' });
  return got({ shift, chosen, onSubject, moved, share });
}

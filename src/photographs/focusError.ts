// A focus error in millimetres at the target as the person reckons: as a share of the depth of field, and as steps of correction that undo it.
// What a step is worth is an estimate of the bench, or better, what a bracket measured.
import { shareOfDepth, type DepthOfField } from '../optics/depthOfField.ts';
import type { Millimetres } from '../units.ts';
import type { WithInterval } from './withInterval.ts';

/** Millimetres at the target for one step. */
export type StepSize = { readonly from: 'estimate'; readonly step: Millimetres } | { readonly from: 'bracket'; readonly step: WithInterval };

export interface FocusError {
  /** Positive is behind the target. */
  readonly millimetres: WithInterval;
  /** Share of the depth on its own side: 1 at the limit of what passes for sharp. */
  readonly share: number;
  /** Steps to add to the correction so that focus falls on the target, with the interval; null where a step may be worth nothing. */
  readonly toAdd: WithInterval | null;
}

export function focusErrorOf(error: WithInterval, depth: DepthOfField, size: StepSize): FocusError {
  return { millimetres: error, share: shareOfDepth(error.value, depth), toAdd: stepsFor(error, size) };
}

/** A positive correction moves focus away from the camera, so focus behind the target takes a negative one. */
function stepsFor({ value, low, high }: WithInterval, size: StepSize): WithInterval | null {
  const [step, least, most] = size.from === 'estimate' ? [size.step, size.step, size.step] : [size.step.value, size.step.low, size.step.high];
  if (!(least > 0)) return null;
  // An end of the interval lies at whichever end of the step's makes it longer.
  const longest = (error: number): number => -error / (error === 0 ? step : least);
  const shortest = (error: number): number => -error / (error === 0 ? step : most);
  return {
    value: -value / step,
    low: high > 0 ? longest(high) : shortest(high),
    high: low < 0 ? longest(low) : shortest(low),
  };
}

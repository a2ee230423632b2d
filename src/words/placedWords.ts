// What is estimated from a finished sweep: whether its width is plausible, and a value shifted on purpose.
import type { BenchFault } from '../optics/fault.ts';
import type { Placement } from '../optics/placement.ts';
import type { StepSize } from '../photographs/focusError.ts';
import type { BandWidth } from '../optics/stepWorth.ts';

export interface PlacedWords {
  readonly title: string;
  readonly placed: (placement: Placement) => string;
  /** `by`: what a step is worth was measured by a bracket, or is an estimate. */
  readonly width: (width: BandWidth, by: StepSize['from']) => string;
  readonly fault: (fault: BenchFault) => string;
}

// What is estimated from a finished sweep: whether its width is plausible, and a value shifted on purpose.
import type { BenchFault } from '../optics/fault.ts';
import type { Placement } from '../optics/placement.ts';
import type { BandWidth } from '../optics/stepWorth.ts';

export interface PlacedWords {
  readonly title: string;
  readonly placed: (placement: Placement) => string;
  readonly width: (width: BandWidth) => string;
  readonly fault: (fault: BenchFault) => string;
}

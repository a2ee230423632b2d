// What was ticked and read while a rig was set up, where it is looked at again.
import type { BenchReading } from '../optics/setUp/reading.ts';

export interface ReadingsWords {
  readonly title: string;
  readonly ticked: (steps: number) => string;
  readonly reading: (reading: BenchReading) => string;
}

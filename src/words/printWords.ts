// What stands on the printed target and ramp, and on the page that prints them.
import type { PaperName, SheetLabels } from '../optics/print/sheets.ts';
import type { RampLabels } from '../optics/print/ramp.ts';
import type { BenchFault } from '../optics/fault.ts';
import type { DistanceUnit } from '../optics/writtenLength.ts';
import type { Millimetres, Moment } from '../units.ts';

export interface PrintWords {
  /** The situation and the date, a line each; a name is empty where it is not known. */
  readonly whose: (of: {
    readonly lens: string;
    readonly body: string;
    readonly focalLength: Millimetres;
    readonly distance: Millimetres;
    readonly unit: DistanceUnit;
    readonly day: Moment;
  }) => readonly string[];
  /** Below those lines, and below the scale. */
  readonly sizes: (bar: Millimetres, scale: Millimetres) => string;
  readonly scale: (scale: Millimetres) => string;
  readonly ramp: string;
  readonly depth: RampLabels['depth'];
  readonly sheets: Readonly<Record<'target' | 'ramp', SheetLabels>>;
  readonly page: {
    readonly title: string;
    readonly paper: string;
    readonly papers: Readonly<Record<PaperName, string>>;
    /** How many sheets the target is on, and how to print them. */
    readonly drawn: (sheets: number) => string;
    readonly noOrder: string;
    readonly fault: (fault: BenchFault) => string;
  };
}

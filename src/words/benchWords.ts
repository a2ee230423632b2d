// What the bench says: its fields, and what follows from them, card by card. Its faults, cautions and readings lie beside it.
import type { BenchDistance } from '../optics/distance.ts';
import type { BenchFault } from '../optics/fault.ts';
import type { Squareness, Tilt } from '../optics/fourSides.ts';
import type { Lighting, Mains } from '../optics/lamps.ts';
import type { LightVerdict } from '../optics/light.ts';
import type { MeasuredFrom } from '../optics/measuredFrom.ts';
import type { PrintCheck } from '../optics/print/printCheck.ts';
import type { PaperName } from '../optics/print/sheets.ts';
import type { Degrees, Ev, FNumber, Magnification } from '../optics/quantity.ts';
import type { ConfusionRule, Sensor } from '../optics/sensor.ts';
import type { StepSize } from '../photographs/focusError.ts';
import type { SetUpCase } from '../optics/setUp/step.ts';
import type { DistanceUnit } from '../optics/writtenLength.ts';
import type { Millimetres } from '../units.ts';

/** Every field of the bench. */
type Field =
  | 'unit'
  | 'from'
  | 'distance'
  | 'reach'
  | 'closest'
  | 'aperture'
  | 'converter'
  | 'sensor'
  | 'pixels'
  | 'area'
  | 'confusion'
  | 'ownConfusion'
  | 'worth'
  | 'scalePixels'
  | 'printed'
  | 'paper'
  | 'iso'
  | 'metered'
  | 'shutter'
  | 'fine'
  | 'plenty'
  | 'lighting'
  | 'mains'
  | 'squareBy'
  | 'mirror'
  | 'spot'
  | 'left'
  | 'right'
  | 'top'
  | 'bottom'
  | 'width'
  | 'height'
  | 'old'
  | 'celsius'
  | 'rampReading'
  | 'rampFace'
  | 'rampSetBack'
  | 'share'
  | 'version';

/** The options of a field that is picked, by their ids. */
interface Choices {
  readonly unit: Readonly<Record<DistanceUnit, string>>;
  readonly from: Readonly<Record<MeasuredFrom, string>>;
  readonly confusion: Readonly<Record<ConfusionRule['by'], string>>;
  readonly paper: Readonly<Record<PaperName, string>>;
  readonly lighting: Readonly<Record<Lighting, string>>;
  readonly mains: Readonly<Record<`${Mains}`, string>>;
  readonly squareBy: Readonly<Record<SetUpCase['squareBy'], string>>;
  readonly version: Readonly<Record<SetUpCase['version'], string>>;
}

/** A figure and, smaller, what it is to be read with. */
export interface Figure {
  readonly name: string;
  readonly value: string;
  readonly note?: string;
}

export interface BenchWords {
  readonly title: string;
  readonly focalLength: string;
  readonly missing: Readonly<Record<'no focal length' | 'untold', string>>;
  readonly rig: (of: { readonly lens: string; readonly body: string; readonly focalLength: Millimetres }) => string;
  readonly fault: (fault: BenchFault) => string;
  readonly field: Readonly<Record<Field, string>>;
  readonly hint: Readonly<Partial<Record<Field, string>>>;
  /** Of the rectangle's sides, where they are left empty. */
  readonly empty: (length: number) => string;
  /** In the walk, where the unit is not in sight. */
  readonly measured: Readonly<Record<DistanceUnit, string>>;
  readonly choices: Choices;
  readonly sensor: (sensor: Sensor) => string;
  readonly distance: {
    readonly title: string;
    readonly figures: (of: {
      readonly usual: Millimetres;
      readonly shortest: Millimetres;
      readonly yours: Millimetres;
      readonly unit: DistanceUnit;
    }) => readonly Figure[];
    /** `least`: the shortest distance for general use. */
    readonly stands: (at: BenchDistance, least: Millimetres, unit: DistanceUnit) => string;
    readonly use: (distance: Millimetres, unit: DistanceUnit) => string;
  };
  readonly depth: {
    readonly title: string;
    readonly finer: string;
    readonly wanted: string;
    readonly figures: (of: {
      readonly magnification: Magnification;
      readonly measured: boolean;
      readonly total: Millimetres | 'infinite';
      readonly front: Millimetres;
      readonly behind: Millimetres | 'infinite';
      readonly near: Millimetres;
      readonly far: Millimetres | 'infinite';
      readonly focus: Millimetres;
      readonly quarterWave: Millimetres;
      readonly hyperfocal: Millimetres;
      readonly blur: Millimetres;
      readonly airy: number;
      readonly unit: DistanceUnit;
    }) => readonly Figure[];
    /** `share`: of the depth behind the target. */
    readonly step: (step: Millimetres, share: number, unit: DistanceUnit, by: StepSize['from']) => string;
    /** Below the worth of a step, where a bracket measured it. */
    readonly worthMeasured: string;
    readonly converted: (aperture: FNumber, lensSteps: number, bodySteps: number) => string;
  };
  readonly target: {
    readonly title: string;
    readonly wanted: string;
    readonly size: (bar: Millimetres, field: Millimetres, sheets: number) => string;
    readonly open: string;
    readonly print: (check: PrintCheck) => string;
  };
  readonly light: {
    readonly title: string;
    readonly finer: string;
    /** `wanted`: the mains whose flicker shows at this shutter. */
    readonly verdict: (of: {
      readonly ev: Ev;
      readonly onGrey: number;
      readonly onPaper: number;
      readonly verdict: LightVerdict;
      readonly flickers: Mains | null;
    }) => string;
  };
  readonly square: {
    readonly title: string;
    readonly allowed: (tilt: Degrees, width: Millimetres, nearer: Millimetres) => string;
    readonly miss: (pixels: number, spot: Millimetres) => string;
    /** By mirror or spot; `steps`: what the tilt costs at the edge of the AF area. */
    readonly tilted: (by: 'mirror' | 'spot', tilt: Degrees, steps: number, square: boolean) => string;
    readonly bySides: (tilt: Tilt, allowed: Degrees, found: Squareness) => string;
  };
  readonly place: {
    readonly title: string;
    readonly finer: string;
    readonly onTarget: string;
    /** `error`: positive behind the target; the rest is known once the rig is. */
    readonly focus: (
      error: number,
      unit: DistanceUnit,
      worth: { readonly share: number; readonly steps: number; readonly by: StepSize['from'] } | null,
    ) => string;
    readonly wanted: string;
    /** Share of the depth that lies in front without a shift. */
    readonly share: (now: number) => string;
  };
  readonly walk: {
    readonly title: string;
    readonly what: string;
    readonly kit: string;
    readonly traits: Readonly<Record<'bodyStabiliser' | 'lensStabiliser' | 'liveView' | 'rearButton' | 'manualAtBody' | 'zoom' | 'heavy', string>>;
    readonly notYet: string;
    readonly begin: string;
  };
}

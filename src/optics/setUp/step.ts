// One step of the set-up walk, as it is spoken and shown, and the case it adapts to.
import type { Millimetres, Steps } from '../../units.ts';
import type { DistanceUnit } from '../length.ts';
import type { Lighting, Mains } from '../lamps.ts';
import type { MeasuredFrom } from '../magnification.ts';
import type { FNumber } from '../quantity.ts';
import type { Caution } from './caution.ts';
import type { ReadingKind } from './reading.ts';
import type { StepId } from './stepIds.ts';

/** Everything the walk depends on. */
export interface SetUpCase {
  /** The practice camera needs no rig. */
  readonly practice: boolean;
  readonly version: 'long' | 'short';
  readonly body: {
    readonly stabiliser: boolean;
    readonly liveView: boolean;
    readonly rearButton: boolean;
    /** Focus can be set to manual at the body, without touching the lens. */
    readonly manualAtBody: boolean;
  };
  readonly lens: {
    readonly stabiliser: boolean;
    readonly zoom: boolean;
    /** Heavy enough to need its own tripod foot. */
    readonly heavy: boolean;
  };
  /** The converter's name, or null. */
  readonly converter: string | null;
  readonly focalLength: Millimetres;
  readonly aperture: FNumber;
  readonly distance: Millimetres;
  readonly measuredFrom: MeasuredFrom;
  readonly unit: DistanceUnit;
  readonly lighting: Lighting;
  readonly mains: Mains;
  readonly squareBy: 'mirror' | 'sides' | 'spot';
  readonly start: Steps;
}

/** A step for one case. */
export interface SetUpStep {
  readonly id: StepId;
  /** A short sentence to speak. */
  readonly say: string;
  /** One sentence to read. */
  readonly show: string;
  readonly cautions: readonly Caution[];
  /** What may be entered here; the walk goes on without it. */
  readonly reads: ReadingKind | null;
}

/** A step for every case: whether it is walked, and its words. */
export interface StepRule {
  readonly id: StepId;
  readonly when?: (given: SetUpCase) => boolean;
  /** Left out of the short version. */
  readonly longOnly?: true;
  readonly say: (given: SetUpCase) => string;
  readonly show: (given: SetUpCase) => string;
  readonly cautions?: (given: SetUpCase) => readonly Caution[];
  readonly reads?: (given: SetUpCase) => ReadingKind;
}

// One step of the set-up walk as data, and the case it adapts to. The catalogue has what is spoken and shown of each.
import type { Millimetres, Steps } from '../../units.ts';
import type { Lighting, Mains } from '../lamps.ts';
import type { MeasuredFrom } from '../measuredFrom.ts';
import type { FNumber } from '../quantity.ts';
import type { DistanceUnit } from '../writtenLength.ts';
import type { Caution, SquareBy } from './caution.ts';
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
  /** The converter's factor, or null. */
  readonly converter: number | null;
  readonly focalLength: Millimetres;
  readonly aperture: FNumber;
  readonly distance: Millimetres;
  readonly measuredFrom: MeasuredFrom;
  readonly unit: DistanceUnit;
  readonly lighting: Lighting;
  readonly mains: Mains;
  readonly squareBy: SquareBy;
  readonly start: Steps;
}

/** What the sentences of each step depend on, by its name. */
type Values = {
  readonly converter: { readonly factor: number };
  readonly zoom: { readonly focalLength: Millimetres };
  readonly distance: { readonly distance: Millimetres; readonly from: MeasuredFrom; readonly unit: DistanceUnit };
  readonly square: { readonly by: SquareBy };
  readonly stabiliser: { readonly at: 'body' | 'lens' | 'both' };
  readonly aperture: { readonly aperture: FNumber };
  readonly 'start value': { readonly start: Steps };
  readonly 'critical focus': { readonly by: 'live view' | 'photographs' };
  readonly 'hold focus': { readonly at: 'body' | 'lens' };
  readonly viewfinder: { readonly leaves: 'live view' | 'nothing' };
};

/** What a step says, before it is a sentence. */
export type StepOf<Id extends StepId> = { readonly id: Id } & (Id extends keyof Values ? Values[Id] : unknown);
export type StepSaid = { readonly [Id in StepId]: StepOf<Id> }[StepId];

/** A step for one case. */
export interface SetUpStep {
  readonly said: StepSaid;
  readonly cautions: readonly Caution[];
  /** What may be entered here; the walk goes on without it. */
  readonly reads: ReadingKind | null;
}

/** A step for every case: whether it is walked, and what it says. */
export interface StepRule {
  readonly when?: (given: SetUpCase) => boolean;
  /** Left out of the short version. */
  readonly longOnly?: true;
  readonly said: (given: SetUpCase) => StepSaid;
  readonly cautions?: (given: SetUpCase) => readonly Caution[];
  readonly reads?: (given: SetUpCase) => ReadingKind;
}

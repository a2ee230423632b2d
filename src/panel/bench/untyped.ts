// What stands at the bench before anything is entered or picked there, and what can be picked.
import type { Country } from '../../country.ts';
import type { Lighting, Mains } from '../../optics/lamps.ts';
import { USUAL_LIGHT } from '../../optics/light.ts';
import type { MeasuredFrom } from '../../optics/measuredFrom.ts';
import type { PaperName } from '../../optics/print/sheets.ts';
import { FULL_FRAME, writeSensor, type ConfusionRule } from '../../optics/sensor.ts';
import type { SetUpCase } from '../../optics/setUp/step.ts';
import { USUAL_AF_AREA } from '../../optics/squareness.ts';
import { USUAL_STEP_WORTH } from '../../optics/stepWorth.ts';
import type { DistanceUnit } from '../../optics/writtenLength.ts';
import { millimetres } from '../../units.ts';
import type { BenchValues } from './values.ts';

export const USUAL_VALUES: Partial<BenchValues> = {
  pixels: 6000,
  area: USUAL_AF_AREA,
  ownConfusion: millimetres(0.03),
  worth: USUAL_STEP_WORTH,
  ...USUAL_LIGHT,
};

export interface Picks {
  readonly unit: DistanceUnit;
  readonly from: MeasuredFrom;
  /** As `writeSensor` has it: a body may bring a size of its own. */
  readonly sensor: string;
  readonly confusion: ConfusionRule['by'];
  readonly lighting: Lighting;
  readonly mains: `${Mains}`;
  readonly squareBy: SetUpCase['squareBy'];
  readonly paper: PaperName;
  readonly version: SetUpCase['version'];
}

/** Where a person has chosen nothing: unit and paper as their country has them. */
export const usualPicks = ({ unit, paper }: Country): Picks => ({
  unit,
  from: 'film plane',
  sensor: writeSensor(FULL_FRAME),
  confusion: 'diagonal',
  lighting: 'daylight',
  mains: '50',
  squareBy: 'mirror',
  paper,
  version: 'long',
});

/** What the kit has, as far as the set-up walk depends on it. */
export const KIT_TRAITS = {
  bodyStabiliser: false,
  liveView: true,
  rearButton: false,
  manualAtBody: false,
  lensStabiliser: false,
  zoom: false,
  heavy: false,
};
export type KitTraits = Readonly<Record<keyof typeof KIT_TRAITS, boolean>>;

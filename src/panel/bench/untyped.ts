// Every field and tick of the bench by name, and what stands there before anything is typed.
import { USUAL_LIGHT } from '../../optics/light.ts';
import type { MeasuredFrom } from '../../optics/measuredFrom.ts';
import { USUAL_AF_AREA } from '../../optics/squareness.ts';
import { USUAL_STEP_WORTH } from '../../optics/stepWorth.ts';

/** What stands in each field before anything is typed there. */
export const UNTYPED = {
  unit: 'm',
  from: 'film plane' satisfies MeasuredFrom as string,
  distance: '',
  reach: '',
  closest: '',
  aperture: '',
  converter: '',
  sensor: '36x24',
  pixels: '6000',
  area: String(USUAL_AF_AREA),
  confusion: 'diagonal',
  ownConfusion: '0.03',
  worth: String(USUAL_STEP_WORTH),
  scalePixels: '',
  printed: '',
  iso: '',
  metered: '',
  shutter: '',
  fine: String(USUAL_LIGHT.fine),
  plenty: String(USUAL_LIGHT.plenty),
  lighting: 'daylight',
  mains: '50',
  squareBy: 'mirror',
  mirror: '',
  spot: '',
  left: '',
  right: '',
  top: '',
  bottom: '',
  width: '',
  height: '',
  old: '',
  celsius: '',
  rampReading: '',
  rampFace: '',
  rampSetBack: '',
  share: '',
  paper: 'A4',
  version: 'long',
};

/** Every field as it stands on the screen. */
export type Typed = Readonly<Record<keyof typeof UNTYPED, string>>;
export type BenchField = keyof Typed;

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

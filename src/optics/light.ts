// Whether there is light enough for phase detection. EV = log2(N²/t); luminance L = K·2^EV/S with K = 12.5 and
// illuminance E = C·2^EV/S with C = 250 (ISO 2720:1974). A camera meters what the surface sends back, so lux from it
// holds for a mid-grey surface; a sheet of white paper sends back about five times as much.
import * as v from 'valibot';
import type { Seconds } from '../units.ts';
import type { Exposure } from './exposure.ts';
import { plain } from './fault.ts';
import { Ev, ev, lux, type FNumber, type Lux } from './quantity.ts';
import { exactAperture, exactIso, exactShutter } from './stops.ts';

/** From true numbers; shown ones go through their exact stops first. */
export const exposureValue = (aperture: FNumber, shutter: Seconds): Ev => ev(Math.log2(aperture ** 2 / shutter));

/** The exposure value as at ISO 100, from what the camera shows. This is the one that is stored. */
export const measuredEv = ({ iso, aperture, shutter }: Exposure): Ev =>
  ev(exposureValue(exactAperture(aperture), exactShutter(shutter)) - Math.log2(exactIso(iso) / 100));

const K = 12.5;
const C = 250;

/** Share of the light that a surface sends back when meters for light coming and light falling agree: π·K/C. */
export const MID_GREY = (Math.PI * K) / C;
/** The same of white paper (common practice, no source). */
export const WHITE_PAPER = 0.85;

/** Light coming from the surface metered, in candela per square metre, for a reading at ISO 100. */
export const luminance = (ev100: Ev): number => (K * 2 ** ev100) / 100;

/** Light falling on a matt surface that sends back this share of it, 0 to 1: π·L/share. */
export const illuminance = (ev100: Ev, sentBack: number = MID_GREY): Lux => lux((Math.PI * luminance(ev100)) / sentBack);

/** Where light is enough, as EV at ISO 100 (common practice, no source: settable). */
export const LightThresholds = v.pipe(
  v.object({ fine: Ev, plenty: Ev }),
  v.check(({ fine, plenty }) => fine < plenty, plain('plenty below fine')),
);
export type LightThresholds = v.InferOutput<typeof LightThresholds>;
export const USUAL_LIGHT: LightThresholds = { fine: ev(7), plenty: ev(9) };

export type LightVerdict = 'too dim' | 'fine' | 'plenty';

export function lightVerdict(ev100: Ev, thresholds: LightThresholds = USUAL_LIGHT): LightVerdict {
  if (ev100 < thresholds.fine) return 'too dim';
  return ev100 < thresholds.plenty ? 'fine' : 'plenty';
}

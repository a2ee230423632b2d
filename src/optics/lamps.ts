// What lamps do besides lighting: mains light swells and fades at twice the mains frequency, and warm light focuses
// elsewhere than daylight in lenses whose colours do not meet in one plane (common practice, no source).
import { seconds, type Seconds } from '../units.ts';

export type Mains = 50 | 60;
export const LIGHTINGS = ['daylight', 'steady lamp', 'mains lamp', 'warm lamp'] as const;
export type Lighting = (typeof LIGHTINGS)[number];

/** Swells in a second, and the time from one to the next. */
export const flicker = (mains: Mains): { readonly hertz: number; readonly period: Seconds } => ({
  hertz: 2 * mains,
  period: seconds(1 / (2 * mains)),
});

/** A photograph is even when its exposure holds whole swells, or so many that a part of one does not show. */
function evenExposure(mains: Mains, shutter: Seconds): boolean {
  const swells = shutter / flicker(mains).period;
  const whole = Math.round(swells);
  return swells > 20 || (whole >= 1 && Math.abs(swells - whole) <= 0.1 * whole);
}

/** Whether mains lamps make a photograph at this shutter differ from the next one. */
export const flickerShows = (lighting: Lighting, mains: Mains, shutter: Seconds): boolean =>
  (lighting === 'mains lamp' || lighting === 'warm lamp') && !evenExposure(mains, shutter);

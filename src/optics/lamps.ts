// What lamps do besides lighting: mains light swells and fades at twice the mains frequency, and warm light focuses
// elsewhere than daylight in lenses whose colours do not meet in one plane (common practice, no source).
import { seconds, type Seconds } from '../units.ts';

export type Mains = 50 | 60;
export type Lighting = 'daylight' | 'steady lamp' | 'mains lamp' | 'warm lamp';

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

/** Whether mains lamps spoil a photograph at this shutter, in words; null where they do not. */
export function shutterCaution(lighting: Lighting, mains: Mains, shutter: Seconds): string | null {
  const swells = lighting === 'mains lamp' || lighting === 'warm lamp';
  if (!swells || evenExposure(mains, shutter)) return null;
  return `At this shutter the lamps\u2019 flicker changes the exposure from one photograph to the next: choose 1/${2 * mains} s or a whole multiple of it.`;
}

/** What to say of the light chosen; nothing for daylight and steady lamps. */
export function lightCautions(lighting: Lighting, mains: Mains): string[] {
  if (lighting === 'daylight' || lighting === 'steady lamp') return [];
  const flickers =
    `Lamps on ${mains} Hz mains flicker ${2 * mains} times a second: if the light wavers, use a lamp without flicker,` +
    ` and expose photographs for 1/${2 * mains} s or longer.`;
  const warm = 'Warm light can focus a little behind or before daylight: measure in the light you photograph in.';
  return lighting === 'warm lamp' ? [flickers, warm] : [flickers];
}

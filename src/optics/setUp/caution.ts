// Where something may hurt or break, or lead astray. These are the usual cautions of the trade; the maker's manual goes
// before them.
import type { Lighting, Mains } from '../lamps.ts';

/** A person or the kit may come to harm. */
export type Harm = 'manual' | 'heavy lens' | 'leads' | 'tripod' | 'hot lamps' | 'mirror' | 'edges of the mirror' | 'laser' | 'laser on the sensor';

export type Caution =
  | { readonly may: 'hurt'; readonly is: Harm }
  /** The result may come out wrong. */
  | { readonly may: 'mislead'; readonly is: 'service' | 'warm light' }
  | { readonly may: 'mislead'; readonly is: 'lamps on the mains'; readonly mains: Mains };

const hurt = (...all: readonly Harm[]): readonly Caution[] => all.map((is) => ({ may: 'hurt', is }));

/** Before anything is begun. */
export const AT_FIRST: readonly Caution[] = [...hurt('manual'), { may: 'mislead', is: 'service' }];
export const AT_THE_TRIPOD = hurt('tripod', 'leads');
export const WITH_A_HEAVY_LENS = hurt('heavy lens', 'tripod', 'leads');

export type SquareBy = 'mirror' | 'sides' | 'spot';

export const SQUARING: Readonly<Record<SquareBy, readonly Caution[]>> = {
  mirror: hurt('mirror', 'edges of the mirror'),
  sides: [],
  spot: hurt('laser', 'laser on the sensor', 'mirror', 'edges of the mirror'),
};

/** For the light in use. */
export function lampCautions(lighting: Lighting, mains: Mains): readonly Caution[] {
  if (lighting === 'daylight') return [];
  const lamps = hurt('hot lamps', 'leads');
  if (lighting === 'steady lamp') return lamps;
  const flicker: Caution = { may: 'mislead', is: 'lamps on the mains', mains };
  return lighting === 'warm lamp' ? [...lamps, flicker, { may: 'mislead', is: 'warm light' }] : [...lamps, flicker];
}

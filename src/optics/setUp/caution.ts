// Where something may hurt or break. These are the usual cautions of the trade; the maker's manual goes before them.
// Laser classes are those of IEC 60825-1.
import { lightCautions, type Lighting, type Mains } from '../lamps.ts';

/** `hurt`: a person or the kit may come to harm. `mislead`: the result may. */
export interface Caution {
  readonly may: 'hurt' | 'mislead';
  readonly show: string;
}

const hurt = (show: string): Caution => ({ may: 'hurt', show });

export const MANUAL = hurt(
  'Follow your camera maker\u2019s manual and advice on warranty: nothing here needs opening or adjusting inside.',
);
export const SERVICE: Caution = {
  may: 'mislead',
  show:
    'Correction cures a constant error only: for one beyond the scale, a damaged lens or uneven sharpness, ask the ' +
    'maker\u2019s service.',
};
export const HEAVY_LENS = hurt(
  'Mount a heavy lens by its own tripod foot, and hold it while you loosen or tighten a clamp.',
);
export const LEADS = hurt('Lay leads along the wall or tape them down, so that nobody trips and pulls the rig over.');
export const TRIPOD = hurt('Spread the tripod\u2019s legs fully and hang a weight low on it if it could tip.');
const HOT_LAMPS = hurt(
  'Lamps get hot: keep them clear of paper, cloth and hands, and let them cool before you move them.',
);
export const MIRROR = hurt(
  'Never let the mirror throw the sun or a lamp into the lens or an eye: look for the reflection in live view or ' +
    'from the side first.',
);
export const MIRROR_EDGES = hurt('Mind the mirror\u2019s edges, and fix it so that it cannot fall.');
export const LASER = hurt(
  'Use only a laser of class 1 or 2 (IEC 60825-1), never look into its beam or reflection, and never have it on ' +
    'with an eye at the viewfinder.',
);
export const LASER_SENSOR = hurt(
  'Keep the laser\u2019s beam and its reflection off the lens: it can damage the sensor.',
);

/** For the light in use. */
export function lampCautions(lighting: Lighting, mains: Mains): Caution[] {
  if (lighting === 'daylight') return [];
  const mislead = lightCautions(lighting, mains).map((show): Caution => ({ may: 'mislead', show }));
  return [HOT_LAMPS, LEADS, ...mislead];
}

// English: the cautions of the bench. Laser classes are those of IEC 60825-1.
import type { Caution, Harm } from '../../optics/setUp/caution.ts';
import { flicker } from '../../optics/lamps.ts';
import type { CautionsWords } from '../cautionsWords.ts';
import { write } from './write.ts';

const HARM: Readonly<Record<Harm, string>> = {
  manual: 'Follow the manual of your camera and what its maker says about the warranty. Nothing here needs opening or adjusting inside.',
  'heavy lens': 'Mount a heavy lens by its own tripod foot. Hold it while you loosen or tighten a clamp.',
  leads: 'Lay leads along the wall or tape them down, so that nobody trips and pulls the rig over.',
  tripod: 'Spread the legs of the tripod fully. Hang a weight low on it if it could tip.',
  'hot lamps': 'Lamps get hot. Keep them clear of paper, cloth and hands, and let them cool before you move them.',
  mirror: 'Never let the mirror throw the sun or a lamp into the lens or an eye. Look for the reflection in live view or from the side first.',
  'edges of the mirror': 'Mind the edges of the mirror, and fix it so that it cannot fall.',
  laser: 'Use only a laser of class 1 or 2 (IEC 60825-1). Never look into its beam or reflection, and never have it on with an eye at the viewfinder.',
  'laser on the sensor': 'Keep the beam of the laser and its reflection off the lens. It can damage the sensor.',
};

export const words: CautionsWords = {
  title: 'Cautions',
  takeCare: 'Take care.',
  caution,
};

function caution(one: Caution): string {
  switch (one.is) {
    case 'service':
      return 'A correction only cures a constant error. For an error beyond the range of corrections, a damaged lens or uneven sharpness, ask the maker’s service.';
    case 'lamps on the mains': {
      const { hertz } = flicker(one.mains);
      return `Lamps on ${write.number(one.mains)}\u00a0Hz mains flicker ${write.number(hertz)} times a second. If the focus light wavers, use a lamp without flicker, and expose photographs for 1/${hertz}\u00a0s or longer.`;
    }
    case 'warm light':
      return 'Warm light can focus slightly nearer or farther than daylight. Measure in the light you photograph in.';
    default:
      return HARM[one.is];
  }
}

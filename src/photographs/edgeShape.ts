// What an edge's levels tell about its figure: whether one side is blown or black, whether it stands out of the noise, and how far the light
// goes past its level beside it. In light that was sharpened it does, and the figure flatters the lens.
import { BINS, meanOf, type EdgeSpread } from './edgeSpread.ts';
import type { EdgeStrip } from './edgeStrip.ts';

export interface EdgeShape {
  readonly blown: 'white' | 'black' | null;
  readonly stands: boolean;
  /** Share of the step. */
  readonly overshoot: number;
  /** Share of the strip's pixels. */
  readonly clipped: number;
}

/** The two outermost codes of a byte, in light: 254 of 255 and 1 of 255 by the curve of sRGB. */
const WHITE = 0.991;
const BLACK = 0.0004;
/** Share of one side's outer half that may stand there (common practice, no source): beside the edge, sharpening alone drives light past the ends. */
const BLOWN = 0.1;
/** Least step, as a share of the light of both sides (a print's black on its white has 0.9; common practice, no source), and in noise of one pixel. */
const LEAST_STEP = 0.2;
const LEAST_NOISES = 3;
/** Deviations that noise may drive the brightest of a few dozen bins (about, of normal ones). */
const CHANCE = 2.5;
/** Bins that are taken together before the highest is sought: half a pixel. */
const TOGETHER = BINS / 2;

export function edgeShape(strip: EdgeStrip, spread: EdgeSpread, rows: readonly number[]): EdgeShape {
  const { light, noise } = spread;
  const outer = Math.ceil(light.length / 8);
  const [one, other] = [meanOf(light, 0, outer), meanOf(light, light.length - outer, light.length)];
  const [dark, bright] = [Math.min(one, other), Math.max(one, other)];
  const step = bright - dark;
  const { inside, outside, all } = atTheEnds(strip, rows);
  let [highest, lowest] = [bright, dark];
  for (let bin = 0; bin + TOGETHER <= light.length; bin++) {
    const here = meanOf(light, bin, bin + TOGETHER);
    highest = Math.max(highest, here);
    lowest = Math.min(lowest, here);
  }
  const chance = (CHANCE * noise) / Math.sqrt((rows.length / BINS) * TOGETHER);
  return {
    blown: outside.white > BLOWN * (all / 4) ? 'white' : outside.black > BLOWN * (all / 4) ? 'black' : null,
    stands: step >= LEAST_STEP * (bright + dark) && step > LEAST_NOISES * noise,
    overshoot: Math.max(0, Math.max(highest - bright, dark - lowest) - chance) / step,
    clipped: (outside.white + outside.black + inside.white + inside.black) / all,
  };
}

interface AtTheEnds {
  white: number;
  black: number;
}

/** Pixels at white and at black: in the half of the strip about the edge, and in its outer quarters. */
function atTheEnds({ across, light }: EdgeStrip, rows: readonly number[]): { readonly inside: AtTheEnds; readonly outside: AtTheEnds; readonly all: number } {
  const [inside, outside]: [AtTheEnds, AtTheEnds] = [
    { white: 0, black: 0 },
    { white: 0, black: 0 },
  ];
  for (const row of rows) {
    for (let at = 0; at < across; at++) {
      const where = at < across / 4 || at >= (3 * across) / 4 ? outside : inside;
      const here = light[row * across + at]!;
      if (here >= WHITE) where.white++;
      else if (here <= BLACK) where.black++;
    }
  }
  return { inside, outside, all: rows.length * across };
}

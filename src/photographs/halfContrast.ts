// Where the contrast has fallen to a half: MTF50, the usual single figure of sharpness. It is the first crossing: a defocused lens brings
// contrast back further up.

/** Beyond it nothing is told: one pixel alone has its half at 0.60 cycles a pixel (G. D. Boreman, Modulation Transfer Function, SPIE 2001). */
const FINEST_FREQUENCY = 0.75;
/** Where the first look is taken at, in cycles a pixel. */
const STEP = 0.01;
const HALVINGS = 24;

/** In cycles a pixel; null where the contrast stays above a half, or is none from the start. */
export function halfContrast(contrast: (frequency: number) => number): number | null {
  let above = 0;
  for (let frequency = STEP; frequency <= FINEST_FREQUENCY; frequency += STEP) {
    const here = contrast(frequency);
    if (!Number.isFinite(here)) return null;
    if (here <= 0.5) return between(contrast, above, frequency);
    above = frequency;
  }
  return null;
}

function between(contrast: (frequency: number) => number, above: number, below: number): number {
  let [low, high] = [above, below];
  for (let round = 0; round < HALVINGS; round++) {
    const middle = (low + high) / 2;
    if (contrast(middle) > 0.5) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

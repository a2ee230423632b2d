// How high a screen may be at 360 px, folded as it opens: a page that is read in two or three turns of the wheel. Common practice, no source.
const HIGHEST = 1600;
/** Where a screen is held to less. */
const LOWER: Readonly<Record<string, number>> = { bench: 1100, 'bench, reckoned': 1100 };
/** The lower edge of the first thing to press: within a low window as it opens. */
export const FIRST_PRESS = 640;

export const boundOf = (screen: string): number => LOWER[screen] ?? HIGHEST;

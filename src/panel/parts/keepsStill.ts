// Whether the person asked their system that nothing on the screen move.

/** No words of a person's: a query of the style sheet. */
const STILL: `(${string})` = '(prefers-reduced-motion: reduce)';

export const keepsStill = (): boolean => matchMedia(STILL).matches;

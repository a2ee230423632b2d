// What is said where something told of a sweep does not fit it.
import type { Unnamed } from '../../sweep/plan.ts';

export const TELLING = {
  scale: 'Enter the scale as three whole numbers: from, to and step.',
  noSweep: 'This sweep cannot be told of here. If another window runs it, take it over first.',
  holdFirst: 'Finish this hold first, then tell it again.',
  offTheScale: (value: string): string => `${value} was held already and is not on that scale. Undo that hold, or choose a scale with ${value} on it.`,
  arrowsSeen: 'Arrows were told with the holds so far. Undo those holds first, or keep the arrows.',
  gone: 'This result is no longer in the kit. Look it up in the logbook.',
  missing: ({ body, lens }: Unnamed): string =>
    body === null ? 'Name the body first.' : lens === null ? 'Name the lens first.' : 'Enter the focal length too, or put it into the name, such as \u201cCorvid 85\u201d.',
} as const;
